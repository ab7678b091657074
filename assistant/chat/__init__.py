"""The chat at a terminal, a concern a module: loop, session, toolbar, completion, keys, history."""
