"""Fit: bodies, sizes, ease, alterations."""
