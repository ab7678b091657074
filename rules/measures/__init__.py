"""Measures: conversions, sums with units, shapes."""
