"""The notebook: measures, size tables, cloth in hand, projects, lists and habits, kept by plain sentences."""

from .notebook import Notebook

__all__ = ["Notebook"]
