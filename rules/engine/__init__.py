"""The engine: declarations, units, formulas, rounding, working, backwards answers."""
