"""Size tables as people type them: by size ("10: 83/64/88, 12: 87/68/92") or by measure ("bust 83 87 92 for 10 12 14").

A line is first made a row of atoms (numbers, size letters, places of the body, signs, other words), without the parts
that speak of the maker's own body; then each of the ways to write a table is tried on it.
"""

from __future__ import annotations

from fractions import Fraction

from rules.engine.declare import Input
from rules.engine.request import Given
from rules.engine.units import factor
from rules.fit.size_tables import FIGURE, Size, SizeTable

from ..lexicon import Match
from ..values import Line, Value
from .size_atoms import BEGINS, ENDS, LETTERS, OPENS, PLACES, SIGNS, SIZE_WORDS, Atom, atoms_of, table_atoms

LARGEST_IN_INCHES = 60  # a bare measure above it is in centimetres: no bust of a size table is larger in inches


NAMES_IN_TABLES = frozenset((*LETTERS, *SIZE_WORDS, *PLACES))
Entry = tuple[str, list[tuple[str, Atom, Atom]], list[int]]


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """The table in the line, body or finished as the input wants, and the values it took."""
    if not _may_hold_table(line):
        return None, frozenset()
    free = {value.number for value in values}
    finished = "finished" in item.label
    atoms = [atom for atom in table_atoms(line, finished) if atom.number < 0 or atom.number in free]
    entries = _by_lists(atoms) or _by_grid(atoms) or _by_size_last(atoms) or _by_entries(atoms)
    if len(entries) < 2 or any(not measures for _, measures, _ in entries):
        return None, frozenset()
    unit = _unit(line, entries)
    lone = _lone_place(line)
    sizes = tuple(
        Size(name, {(place or lone): _ends(low, high, unit) for place, low, high in measures})
        for name, measures, _ in entries
    )
    ordered = tuple(sorted(sizes, key=lambda size: min(size.at.values())))
    used = frozenset(number for *_, numbers in entries for number in numbers)
    places = ", ".join(place or "measure" for place in SizeTable(ordered, unit).places())
    text = f"{', '.join(size.name for size in ordered)} by {places}, in {unit}"
    return Given(SizeTable(ordered, unit), "text", text), used


def _may_hold_table(line: Line) -> bool:
    """Whether a line has any of what every table has: a size's letters, a word for a size or a place, or "10 is", "10:"."""
    if not NAMES_IN_TABLES.isdisjoint(line.words):
        return True
    return any(value.main.bare and not BEGINS.isdisjoint(line.words[value.last : value.last + 1]) for value in line.values)


def read_figure(
    item: Input, line: Line, values: list[Value], matches: list[Match]
) -> tuple[Given | None, frozenset[int]]:
    """Three measures of a figure in a row, bust, waist and hip: "36-28-38", "92/74/98 cm"."""
    free = {value.number for value in values}
    atoms = [atom for atom in atoms_of(line) if atom.kind == "sign" or (atom.kind == "number" and atom.number in free)]
    for first in range(len(atoms) - 4):
        five = atoms[first : first + 5]
        if [atom.kind for atom in five] != ["number", "sign", "number", "sign", "number"] or five[4].spot - five[
            0
        ].spot > 4:
            continue
        if five[1].text not in ("/", "-") or any(atom.value < 20 for atom in five[::2]):
            continue
        three = five[::2]
        unit = next((atom.unit for atom in reversed(three) if atom.unit), "") or _line_unit(line, three)
        found = tuple(
            (place, atom.value * factor(atom.unit or unit)) for place, atom in zip(FIGURE, three, strict=True)
        )
        text = "/".join(atom.text for atom in three) + ("" if three[2].unit else f" {unit}")
        return Given(found, "text", text), frozenset(atom.number for atom in three)
    return None, frozenset()


# -- the ways to write a table ----------------------------------------------------------------------------------------


def _runs(atoms: list[Atom]) -> list[tuple[str, list[Atom]]]:
    """Numbers and size letters in a row, each run with the word it goes by: "size", "for" or a place."""
    runs: list[tuple[str, list[Atom]]] = []
    label, run = "", []
    for atom in [*atoms, Atom("word", "", -1)]:
        if atom.kind in ("number", "name"):
            run.append(atom)
        elif atom.kind != "sign":
            if run:
                runs.append((label, run))
                label, run = "", []
            if atom.kind == "place" or atom.text in ("size", "for"):
                label = atom.text
    return runs


def _by_lists(atoms: list[Atom]) -> list[Entry]:
    """ "sizes 10, 12, 14: bust 83, 87, 92; waist 64, 68, 73", "bust 83 87 92 for 10 12 14"."""
    runs = _runs(atoms)
    names = next(
        (run for label, run in runs if len(run) > 1 and (label == "size" or all(atom.kind == "name" for atom in run))),
        None,
    )
    names = names or next((run for label, run in runs if len(run) > 1 and label == "for"), None)
    if names is None:
        return []
    count = len(names)
    columns = [(label, run) for label, run in runs if label in PLACES.values() and len(run) in (count, 2 * count)]
    if not columns:
        return []
    entries: list[Entry] = []
    for row, name in enumerate(names):
        measures = [(place, *_pair_at(run, row, count)) for place, run in columns]
        entries.append(
            (name.text.split()[0], measures, [name.number, *(atom.number for _, run in columns for atom in run)])
        )
    return entries


def _pair_at(run: list[Atom], row: int, count: int) -> tuple[Atom, Atom]:
    return (run[row], run[row]) if len(run) == count else (run[2 * row], run[2 * row + 1])


def _by_grid(atoms: list[Atom]) -> list[Entry]:
    """ "size bust waist hip 10 83 64 88 12 87 68 92": a head of places, then a size and its measures over and over."""
    plain = [atom for atom in atoms if atom.kind in ("number", "place", "name") or atom.text == "size"]
    for at, atom in enumerate(plain):
        places = []
        while atom.text == "size" and at + 1 < len(plain) and plain[at + 1].kind == "place":
            places.append(plain[at + 1].text)
            at += 1
        cells = plain[at + 1 :]
        wide = len(places) + 1
        if (
            not places
            or len(cells) < 2 * wide
            or len(cells) % wide
            or any(cell.kind not in ("number", "name") for cell in cells)
        ):
            continue
        rows = [cells[first : first + wide] for first in range(0, len(cells), wide)]
        return [
            (
                row[0].text,
                [(place, cell, cell) for place, cell in zip(places, row[1:], strict=True)],
                [c.number for c in row],
            )
            for row in rows
        ]
    return []


def _by_size_last(atoms: list[Atom]) -> list[Entry]:
    """ "bust is 94 cm in size 10, 100 cm in size 12 and 107 cm in 14": each measure before the size it is of."""
    entries: list[Entry] = []
    place, named = "", False  # "96 for a 10, 101 for a 12" names its sizes by "for a"
    for at, atom in enumerate(atoms):
        if atom.kind == "place":
            place = atom.text
        if atom.kind != "number" or [follower.text for follower in atoms[at + 1 : at + 2]] not in (["in"], ["for"], ["at"]):
            continue
        name = next((follower for follower in atoms[at + 2 : at + 5] if follower.text not in ("a", "the", "size")), None)
        named = named or any(follower.text in ("size", "a") for follower in atoms[at + 2 : at + 4])
        if name is not None and named and name.kind in ("number", "name") and not name.unit:
            entries.append((name.text, [(place, atom, atom)], [atom.number, name.number]))
    return entries if len(entries) > 1 else []


def _by_entries(atoms: list[Atom]) -> list[Entry]:
    """ "10 is 83 cm, 12 is 87", "10: 83/64/88", "S 83-87, M 88-92", "size 10 bust 83 waist 64, size 12 bust 87"."""
    starts = [at for at in range(len(atoms)) if _starts_entry(atoms, at)]
    head = [atom.text for atom in atoms[: starts[0]] if atom.kind == "place"] if starts else []
    entries = []
    for start, end in zip(starts, [*starts[1:], len(atoms)], strict=False):
        cells = _clause(atoms[start + 1 : end])
        measures, numbers = _measures(cells, list(dict.fromkeys(head)))
        entries.append((atoms[start].text, measures, [atoms[start].number, *numbers]))
    return [entry for entry in entries if entry[1]]


def _clause(cells: list[Atom]) -> list[Atom]:
    """The atoms up to the end of the sentence."""
    return cells[: next((at for at, cell in enumerate(cells) if cell.text in ENDS), len(cells))]


def _starts_entry(atoms: list[Atom], at: int) -> bool:
    atom = atoms[at]
    before = atoms[at - 1] if at else None
    after = atoms[at + 1] if at + 1 < len(atoms) else None
    if atom.kind == "name":
        return after is not None and after.text not in SIGNS
    if atom.kind != "number" or atom.unit or after is None:
        return False
    if before is not None and before.text in SIZE_WORDS:
        return after.text not in (",", "and", "-", "/")
    opens = before is None or before.text in OPENS
    if opens and after.kind == "place" and at + 2 < len(atoms) and atoms[at + 2].kind == "number":
        return True  # "10 hip 90 cm, 12 hip 94 cm"
    return after.text in BEGINS


def _measures(cells: list[Atom], head: list[str]) -> tuple[list[tuple[str, Atom, Atom]], list[int]]:
    """The measures of one entry: each by the place named before it, else by the head, else bust, waist and hip."""
    numbers = [cell for cell in cells if cell.kind == "number"]
    if len(numbers) == 2 and len(head) < 2 and _is_range(cells, numbers):
        place = next((cell.text for cell in cells if cell.kind == "place"), head[0] if head else "")
        return [(place, numbers[0], numbers[1])], [atom.number for atom in numbers]
    named = any(cell.kind == "place" for cell in cells)
    order = head if len(head) == len(numbers) else list(FIGURE) if len(numbers) == len(FIGURE) else head[:1] or [""]
    measures: list[tuple[str, Atom, Atom]] = []
    place = next((cell.text for cell in cells if cell.kind == "place"), "")
    for cell in cells:
        if cell.kind == "place":
            place = cell.text
        elif cell.kind == "number" and len(measures) < (len(FIGURE) if named else len(order)):
            measures.append((place if named else order[len(measures)], cell, cell))
    return measures, [cell.number for _, cell, _ in measures]


def _is_range(cells: list[Atom], numbers: list[Atom]) -> bool:
    between = cells[cells.index(numbers[0]) + 1 : cells.index(numbers[1])]
    return numbers[0].value < numbers[1].value and any(cell.text in ("-", "to") for cell in between)


# -- units and places -------------------------------------------------------------------------------------------------


def _unit(line: Line, entries: list[Entry]) -> str:
    """The unit typed on any measure of the table, else that of the line's other lengths, else told by their size."""
    measures = [atom for _, row, _ in entries for _, low, high in row for atom in (low, high)]
    typed = next((atom.unit for atom in measures if atom.unit), "")
    return typed or _line_unit(line, measures)


def _line_unit(line: Line, atoms: list[Atom]) -> str:
    for value in line.values:
        for measure in value.members:
            if measure.unit in ("in", "cm", "mm"):
                return measure.unit
    for word in line.words:
        if word in ("inch", "cm"):
            return "in" if word == "inch" else "cm"
    return "cm" if max(atom.value for atom in atoms) > LARGEST_IN_INCHES else "in"


def _ends(low: Atom, high: Atom, unit: str) -> tuple[Fraction, Fraction]:
    return low.value * factor(low.unit or high.unit or unit), high.value * factor(high.unit or unit)


def _lone_place(line: Line) -> str:
    """The place of a table that names none: the only one named anywhere in the line, or "" for whichever is given."""
    met = dict.fromkeys(PLACES[word] for word in line.words if word in PLACES)
    return next(iter(met)) if len(met) == 1 else ""
