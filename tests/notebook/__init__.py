"""The notebook: its sentences, what questions take from it, its lists and files, and how it holds under rough treatment."""
