"""An answer in words for people: the plain sentence first, then the working, what was assumed, cautions and source."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .ink import BOLD, DIM, YELLOW, ink
from .signs import clean
from .tables import aligned, tab_separated
from .wrap import wrap

if TYPE_CHECKING:
    from rules.engine.answer import Answer, Line, Missing, Result, Table, Value

MOST_NEXT = 2
DONE = frozenset("+−×÷(^")  # a formula without any of these works nothing out


def full(answer: Answer, columns: int = 80, colour: bool = False, unicode: bool = False) -> str:
    """The whole answer, in lines of at most so many columns. No line is empty, so that blank lines can part answers.

    colour: SGR codes are put in. unicode: drawings may use box characters.
    """
    if answer.parts:
        from .plan_text import in_lines  # only for a plan

        lines = in_lines(answer, columns, colour, unicode)
    elif answer.status in ("answered", "done"):
        lines = _answered(answer, columns, colour, unicode)
    else:
        lines = _not_answered(answer, columns, colour)
    return "\n".join(lines)


def brief(answer: Answer) -> str:
    """Just the headline answer in one line (a table: its rows, with tabs); the message when there is none."""
    if answer.status not in ("answered", "done"):
        return clean(answer.message)
    if answer.table is not None:
        return "\n".join(tab_separated(answer.table))
    if answer.text or answer.parts:
        return clean(answer.headline)
    return clean(answer.results[0].text if answer.results else answer.headline or answer.message)


# -- answered --------------------------------------------------------------------------------------------------------


def _answered(answer: Answer, columns: int, colour: bool, unicode: bool) -> list[str]:
    lines = ink(wrap(answer.headline or answer.message, columns, "", "  "), BOLD, colour)
    if answer.table is not None:
        lines += aligned(answer.table, columns)
    elif answer.text:
        lines += _text(answer.text, columns)
    else:
        lines += section("Also", [_named(result) for result in not_told(answer)], columns)
    lines += drawn(answer, columns, unicode)
    lines += ink(_working(answer, columns), DIM, colour)
    return lines + told_beside(answer, columns, colour)


def drawn(answer: Answer, columns: int, unicode: bool) -> list[str]:
    """The answer's drawing in lines."""
    if answer.drawing is None:
        return []
    from .drawing import as_text  # only when there is something to draw

    return [line.rstrip() or " " for line in as_text(answer.drawing, columns, unicode).splitlines()]


def told_beside(answer: Answer, columns: int, colour: bool) -> list[str]:
    """What stands below the working: what was read and assumed, cautions, notes, sources, what to try next."""
    lines = section("Read", [_because(value) for value in answer.given if value.why], columns)
    lines += _assumed(answer.assumed, columns)
    lines += section("Not used", list(answer.not_used), columns, joined=True)
    lines += ink(section("Mind", list(answer.cautions), columns), YELLOW, colour)
    lines += section("Note", list(answer.notes), columns)
    lines += ink(section("Source", list(answer.sources), columns), DIM, colour)
    return lines + section("Next", list(answer.next[:MOST_NEXT]), columns)


def not_told(answer: Answer) -> list[Result]:
    """The results that the headline does not give already; of those beside the first, no "0 joins"."""
    some = [result for place, result in enumerate(answer.results) if result.value != 0 or place == 0]
    return [result for result in some if not stands_in(result.text, answer.headline)]


def stands_in(part: str, whole: str) -> bool:
    """Whether the text stands in the sentence by itself: "1/2 in" does not stand in "2 1/2 in"."""
    start = whole.find(part)
    while start >= 0:
        before, after = whole[:start], whole[start + len(part) :]
        longer = before[-1:].isalnum() or before.endswith(("/", ".")) or before.rstrip()[-1:].isdigit()
        if not longer and not after[:1].isalnum():
            return True
        start = whole.find(part, start + 1)
    return False


def _named(result: Result) -> str:
    other = f" ({result.other})" if result.other else ""
    parted = ":" if result.unit == "text" else ""  # else name and words run into one another
    return f"{result.name}{parted} {result.text}{other}"


def _because(value: Value) -> str:
    why = f": {value.why}" if value.why else ""
    return _sentence(f"{_capital(value.name)} {value.text}{why}")


def _assumed(assumed: tuple[Value, ...], columns: int) -> list[str]:
    lines = section("Assumed", [_because(value) for value in assumed], columns)
    if lines:
        such = f"{assumed[0].name} {assumed[0].text}"
        lines += wrap(f'To change one, say it in your own figures, such as "{such}".', columns, "  ", "  ")
    return lines


# -- working ---------------------------------------------------------------------------------------------------------


def _working(answer: Answer, columns: int) -> list[str]:
    if not answer.working:
        return []
    row = _row_worked(answer.table, answer.results) if answer.table else ""
    lines = wrap(f"Working for {row}" if row else "Working", columns, "", "  ")
    for number, line in enumerate(worth_telling(answer), 1):
        lines += _step(number, line, columns)
    return lines


def worth_telling(answer: Answer) -> list[Line]:
    """The steps without those in which nothing is done: a value that only goes by another name, or is said again."""
    names, told, before = {result.name for result in answer.results}, [], ""
    for line in answer.working:
        left, _, right = line.formula.partition(" = ")
        renamed = right and line.numbers == line.result and right[0].isalpha() and not DONE.intersection(right)
        again = "=" not in line.formula and not line.numbers and line.result == before != ""
        if not again and (not renamed or left in names):
            told.append(line)
        before = line.result
    return told


def _row_worked(table: Table, results: tuple[Result, ...]) -> str:
    """What the worked row is a row of: its first cell. Empty when no row has these results."""
    texts = {result.text for result in results}
    series = len(table.columns) - len(results)
    rows = [row for row in table.texts if set(row[max(series, 1) :]) <= texts]
    return f"{table.columns[0][0]} {rows[-1][0]}" if rows else ""


def _step(number: int, line: Line, columns: int) -> list[str]:
    """One step: its sentence, then the formula in words, the numbers put in, and the result, each on its own line."""
    label = f"  {number}. "
    indent = " " * len(label)
    lines = wrap(_sentence(_capital(line.step)), columns, label, indent)
    left, _, right = line.formula.partition(" = ")
    formula = "" if left == right else line.formula  # "strips = strips" tells nothing
    if formula:
        lines += wrap(formula, columns, indent, indent + "  ")
    if line.numbers not in ("", line.result, right) and not line.result.startswith(f"{line.numbers},"):
        lines += wrap(line.numbers, columns, indent + ("= " if formula else ""), indent + "  ")
    if line.result and line.result != right:
        lines += wrap(line.result, columns, indent + "= ", indent + "  ")
    return lines


# -- not answered ----------------------------------------------------------------------------------------------------


def _not_answered(answer: Answer, columns: int, colour: bool) -> list[str]:
    lines = ink(wrap(answer.message, columns), BOLD, colour)
    if answer.status == "incomplete":
        lines += section("So far", [f"{value.name} {value.text}" for value in answer.given], columns, joined=True)
    for missing in answer.missing:
        lines += wrap(_question(missing), columns, "  ", "    ")
    for number, choice in enumerate(answer.choices, 1):
        lines += wrap(choice, columns, f"  {number}. ", "     ")
    lines += section("Not used", list(answer.not_used), columns, joined=True)
    lines += section("Note", list(answer.notes), columns)
    return lines + section("Next", list(answer.next[:MOST_NEXT]), columns)


def _question(missing: Missing) -> str:
    return f"{missing.ask} For example: {missing.example}" if missing.example else missing.ask


def _text(paragraphs: tuple[str, ...], columns: int) -> list[str]:
    """Paragraphs, each with the indent it begins with; a line that goes on is set in by two more."""
    lines: list[str] = []
    for paragraph in paragraphs:
        indent = paragraph[: len(paragraph) - len(paragraph.lstrip())]
        lines += wrap(paragraph, columns, indent, indent + "  ")
    return lines


# -- pieces ----------------------------------------------------------------------------------------------------------


def section(title: str, items: list[str], columns: int, joined: bool = False) -> list[str]:
    """A title and its items: on one line when they are joined, or there is one without a colon; else a list below."""
    if not items:
        return []
    if joined or (len(items) == 1 and ": " not in items[0]):  # "Mind: Heavy loads: ..." would read badly
        return wrap("; ".join(items), columns, f"{title}: ", "  ")
    lines = [title]
    for item in items:
        lines += wrap(item, columns, "  - ", "    ")
    return lines


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _sentence(text: str) -> str:
    return text if text.endswith((".", "?", "!", ":")) else text + "."
