"""Bags: panels, corners, straps, pockets, zips."""
