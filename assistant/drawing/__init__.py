"""Drawings of lays, panels and lines of marks, as text for the terminal and as SVG. They know no units."""
