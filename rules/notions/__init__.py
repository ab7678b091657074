"""Notions: elastic, cords, fastenings, tapes, thread."""
