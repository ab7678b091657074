"""Text in, chunks out: numbers, measures and words as people type them. Knows no trade sum and does no I/O of its own."""
