"""The notebook's sentences: a pattern (see phrases.py), and the act that carries it out, as module.function.

KEEPS change what is kept, TELLS only look. The first pattern that meets the whole line and whose act takes it, counts.
"""

from __future__ import annotations

KEEPS: tuple[tuple[str, str], ...] = (
    ("undo that|it|this?", "history.undo"),
    ("undo the last one|sentence|change|thing", "history.undo"),
    ("take that|it back", "history.undo"),
    ("redo that|it?", "history.redo"),
    ("i? always? work|think|measure|answer in <units>", "habits.keep_units"),
    ("always use|answer in? <units>", "habits.keep_units"),
    ("use|prefer inches|metric|centimetres|centimeters", "habits.keep_units"),
    ("my? money|prices is|are in <units>", "habits.keep_units"),
    ("use|prefer? pounds|dollars|euros", "habits.keep_money"),
    ("my? the? shop|shops|it sells|sell|cuts|cut cloth|fabric|it|material? by|in|to steps? of? the|a? nearest? <measure>", "habits.keep_shop"),
    ("i? always|usually use|allow|take|add|have a|an? <measure> for|as? my|the? <name>", "habits.keep_always"),
    ("i? always|usually use|allow|take|have? my|the|a? <name> of|is? <measure>", "habits.keep_always"),
    ("from now on my|the? <name> is|of? <measure>", "habits.keep_always"),
    ("forget my|the habits|defaults", "habits.forget_all"),
    ("remember|keep|set? that? the|a? usable|seam|seams|hem|fabric|cloth|width|joins|corners|overlap|ease <name>? <measure>", "habits.keep_usual"),
    ("remember|keep|note|save that? my measures|measurements :|are|as? <about>", "measures.keep_own"),
    ("my measures|measurements :|are <about>", "measures.keep_own"),
    ("remember|keep|note|save that? my <about>", "measures.keep_own"),
    ("my <about>", "measures.keep_own"),
    ("i am|'m <measure> tall", "measures.keep_height"),
    ("remember|keep|note|save that? <who> 's measures|measurements :|are|as? <about>", "measures.keep_other"),
    ("<who> 's measures|measurements :|are <about>", "measures.keep_other"),
    ("measures|measurements of|for <who> :|are? <about>", "measures.keep_other"),
    ("remember|keep|note|save that? <who> 's <about>", "measures.keep_other"),
    ("<who> 's <about>", "measures.keep_other"),
    ("forget|drop my <part>", "measures.forget_own"),
    ("forget|drop <who> 's <part>", "measures.forget_other"),
    ("forget|drop <who>", "measures.forget_person"),
)

TELLS: tuple[tuple[str, str], ...] = (
    ("history of? my|the? changes|notebook?", "history.tell"),
    ("what are? my|the habits|defaults", "habits.tell"),
    ("my? habits", "habits.tell"),
    ("what is|are my <part>", "measures.tell_own"),
    ("what 's my <part>", "measures.tell_own"),
    ("my <part>", "measures.tell_own"),
    ("what is|are <who> 's <part>", "measures.tell_other"),
    ("what 's <who> 's <part>", "measures.tell_other"),
    ("<who> 's <part>", "measures.tell_other"),
)
