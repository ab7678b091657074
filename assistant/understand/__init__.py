"""From chunks to a request: which rule, which number is which, what is asked. Holds no trade sum."""
