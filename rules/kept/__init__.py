"""Sums over what a maker keeps: stock in hand, a shopping list over several projects, money paid, sizes in a table."""
