"""Help on the notebook: what can be kept, with a sentence to say for each."""

from __future__ import annotations

NAMES = ("notebook", "the notebook", "my notebook", "keeping")
SENTENCES: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("Measures", ("remember my waist is 66 cm", "Ines's hip is 38 in", "what is my hip?", "forget Ines's hip")),
    ("In questions", ("elastic for my waist", "ease at the bust for Ines if the blouse measures 96 cm")),
    (
        "Size tables",
        (
            "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92",
            "read the size table from sizes.csv as sea dress",
            "what size am I in it?",
        ),
    ),
    (
        "In hand",
        (
            "I have 1.5 m of navy linen 140 cm wide, £9/m",
            "is my navy linen enough for a bag that takes 80 cm?",
            "use 80 cm of it",
            "stash",
        ),
    ),
    (
        "Projects",
        (
            "start project harbour tote",
            "keep that",
            "keep that as red canvas",
            "shortened the sleeves 3/4 in",
            "paid £4.20 for the zip",
            "bought 2 m of navy linen for £18",
            "note: press the hem first",
            "what is left to buy?",
            "what did it cost?",
            "what did I do on the harbour tote?",
            "finish project",
        ),
    ),
    (
        "Lists",
        (
            "add 2 zips to the shopping list",
            "shopping list",
            "cut list",
            "shopping list as CSV to list.csv",
            "export the notebook to notebook.json",
            "import the notebook from notebook.json",
        ),
    ),
    ("Habits", ("work in inches", "pounds", "my shop sells by the half metre", "usable width 42 in", "habits")),
    ("Practice", ("my scores",)),
    ("Taking back", ("undo", "redo", "history of changes")),
)


OPENING = "The notebook keeps what you tell it, in plain sentences such as these:"
