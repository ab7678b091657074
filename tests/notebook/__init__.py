"""The notebook: its sentences, what questions take from it, its lists and files, and rough treatment."""
