"""Projects: begun, gone back to, finished; what was kept of them, changed and noted. Things of the kind "project"."""

from __future__ import annotations

from rules.engine.answer import Answer

from . import reply, state
from .describe import key_of
from .hearing import Hearing
from .page import Page, Thing

KIND = "project"
KEPT, CHANGE, NOTE, PAID, NEED, CUT, GOT = "kept", "change", "note", "paid", "need", "cut", "got"
ASKS = frozenset(("how", "what", "which", "?", "will", "enough", "net", "total"))
# What may follow a verb of change that could be something else too: "cut the straps longer", but not "cut list".
PARTS = frozenset(("the", "a", "an", "my", "her", "his", "both", "each", "off", "up", "out", "in"))
BEGIN_ONE = "start project harbour tote"


def start(hearing: Hearing) -> Answer | None:
    called = hearing.words("project").strip("'\" ")
    earlier = find(hearing.page, called)
    if earlier is not None:
        return _go_on(hearing.page, earlier)
    open_new(hearing.page, called)
    return reply.done(
        f"Project {called} is begun: what you keep now is kept for it.", "keep that, after an answer, keeps the answer."
    )


def open_new(page: Page, called: str) -> Thing:
    """A new project, which is then the one in hand."""
    page.put(KIND, key_of(called), {"called": called, "finished": False})
    state.open_project(page, key_of(called))
    made = page.get(KIND, key_of(called))
    assert made is not None
    return made


def go_on(hearing: Hearing) -> Answer | None:
    project = find(hearing.page, hearing.words("project"))
    return None if project is None else _go_on(hearing.page, project)


def _go_on(page: Page, project: Thing) -> Answer:
    page.put(KIND, project.name, {**project.body, "finished": False})
    state.open_project(page, project.name)
    return reply.done(f"Project {project.body['called']} is in hand again: what you keep now is kept for it.")


def finish_known(hearing: Hearing) -> Answer | None:
    """ "finish harbour tote", where a project is called so."""
    return finish(hearing) if find(hearing.page, hearing.words("project")) else None


def finish(hearing: Hearing) -> Answer | None:
    project = find(hearing.page, hearing.words("project")) if hearing.has("project") else state.current(hearing.page)
    if project is None:
        return none_called(hearing.page, hearing.words("project")) if hearing.has("project") else none_in_hand()
    hearing.page.put(KIND, project.name, {**project.body, "finished": True})
    current = state.current(hearing.page)
    if current is not None and current.name == project.name:
        state.open_project(hearing.page, "")
    return reply.done(
        f"Project {project.body['called']} is finished: its needs are off the shopping list, all else stays kept."
    )


def find(page: Page, called: str) -> Thing | None:
    """The project of that name, or the only one whose name holds all its words."""
    key = key_of(called)
    exact = page.get(KIND, key)
    if exact is not None or not key:
        return exact
    near = [thing for thing in page.all(KIND) if set(key.split()) <= set(thing.name.split())]
    return near[0] if len(near) == 1 else None


def meant(hearing: Hearing) -> Thing | None:
    """The project that is named, or else the one in hand."""
    called = hearing.words("project")
    return (
        find(hearing.page, called)
        if called and called.lower() not in ("it", "that", "this")
        else state.current(hearing.page)
    )


def none_in_hand() -> Answer:
    return reply.needs("I do not know which project this is for.", "project", "Which project is it for?", BEGIN_ONE)


def none_called(page: Page, called: str) -> Answer:
    kept = [thing.body["called"] for thing in page.all(KIND)]
    have = f" Projects: {reply.joined(kept)}." if kept else ""
    return reply.unsure(f"I have no project called {called}.{have} Type: start project {called}")


def missing(hearing: Hearing) -> Answer:
    called = hearing.words("project")
    return (
        none_called(hearing.page, called) if called and called.lower() not in ("it", "that", "this") else none_in_hand()
    )


# -- what was done ---------------------------------------------------------------------------------------------------


def changed(hearing: Hearing) -> Answer | None:
    """A change of the maker's own ("shortened the sleeves 3/4 in"), kept as it was said."""
    if any(token.lower in ASKS for token in hearing.said):
        return None
    project = state.current(hearing.page)
    if project is None:
        return none_in_hand() if hearing.alone else None
    said = hearing.found.text[hearing.said[0].start : hearing.said[-1].end]
    said = said[2:].strip() if said.lower().startswith("i ") else said
    hearing.page.add(CHANGE, {"text": said}, project.name)
    return reply.done(f"Kept for {project.body['called']}: {said}.")


def changed_perhaps(hearing: Hearing) -> Answer | None:
    """The same in words that may be a question's ("cut list", "made 10 cm deeper"): only where none is meant."""
    if not hearing.alone or hearing.said[1].lower not in PARTS:
        return None
    return changed(hearing) if state.current(hearing.page) is not None else None


def note(hearing: Hearing) -> Answer | None:
    project = meant(hearing)
    if project is None and hearing.has("project"):
        return missing(hearing) if hearing.alone else None
    owner = project.name if project is not None else ""
    hearing.page.add(NOTE, {"text": hearing.words("text")}, owner)
    return reply.done(
        f"Noted{' for ' + project.body['called'] if project is not None else ''}: {hearing.words('text')}"
    )


def notes(hearing: Hearing) -> Answer | None:
    if hearing.has("project") and meant(hearing) is None:
        return missing(hearing)
    project = meant(hearing)
    owners = [project] if hearing.has("project") and project is not None else hearing.page.all(KIND)
    rows = [] if hearing.has("project") else [("", one.body["text"]) for one in hearing.page.all(NOTE, "")]
    rows += [(owner.body["called"], one.body["text"]) for owner in owners for one in hearing.page.all(NOTE, owner.name)]
    if not rows:
        return reply.told("There are no notes. Such as: note: press the hem before the lining goes in")
    return reply.told(
        f"{len(rows)} {'note' if len(rows) == 1 else 'notes'}.", table=reply.table(("project", "note"), rows)
    )


def tell_all(hearing: Hearing) -> Answer | None:
    kept = hearing.page.all(KIND)
    if not kept:
        return reply.told(f"No project is begun. Type: {BEGIN_ONE}")
    here = state.current(hearing.page)
    words = [f"{one.body['called']}{_how(one, here)}" for one in kept]
    return reply.told(f"Projects: {reply.joined(words)}.", [reply.words("project", one.body["called"]) for one in kept])


def _how(one: Thing, here: Thing | None) -> str:
    if one.body["finished"]:
        return " (finished)"
    return " (in hand)" if here is not None and here.name == one.name else ""


def tell_known(hearing: Hearing) -> Answer | None:
    """ "show the harbour tote", which is a sentence to the notebook only when a project is called so."""
    return tell(hearing) if find(hearing.page, hearing.words("project")) else None


def tell(hearing: Hearing) -> Answer | None:
    """All that is kept of a project, in the order it was said."""
    project = meant(hearing)
    if project is None:
        return missing(hearing) if hearing.alone else None
    rows = story(hearing.page, project)
    called = project.body["called"]
    if not rows:
        return reply.told(f"Of {called} nothing is kept yet. After an answer, type: keep that")
    return reply.told(
        f"{called[:1].upper()}{called[1:]}, in the order it was kept:", [reply.words(what, said) for what, said in rows]
    )


def story(page: Page, project: Thing) -> list[tuple[str, str]]:
    """(what it is, what was said) for everything kept of a project, the oldest first."""
    kinds = {KEPT: "worked out", CHANGE: "changed", NOTE: "note", PAID: "paid", NEED: "needed", GOT: "used"}
    things = [thing for kind in kinds for thing in page.all(kind, project.name) if not thing.body.get("part")]
    things.sort(key=lambda thing: thing.number)
    return [(thing.body.get("how", kinds[thing.kind]), _said(thing)) for thing in things]


def _said(thing: Thing) -> str:
    body = thing.body
    if thing.kind == KEPT:
        return f"{body['question']}: {body['headline']}"
    if thing.kind in (CHANGE, NOTE):
        return str(body["text"])
    amount = body["amount"]["text"] if body.get("amount") else "all"
    if thing.kind == PAID:
        return f"{amount} for {body['called']}"
    return (
        f"{amount} {body['called']}"
        if body.get("amount", {}) and body["amount"]["kind"] == "count"
        else f"{amount} of {body['called']}"
    )
