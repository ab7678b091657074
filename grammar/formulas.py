"""Formulas: from text to the tree of grammar.formula, with a plain word for each way one can be wrong."""

from __future__ import annotations

from fractions import Fraction

from lark import Lark, Token, Tree, UnexpectedInput

from grammar.errors import FormulaError
from grammar.formula import Binary, Call, Name, Negate, Node, Number

DEEPEST = 50
LONGEST_FORMULA = 2000


def read(text: str, parser: Lark) -> Node:
    """The tree of a formula. Raises FormulaError."""
    if not text.strip():
        raise FormulaError("the formula is empty; write one such as: 2 * seam + width", 0)
    if len(text) > LONGEST_FORMULA:
        raise FormulaError(
            f"the formula has more than {LONGEST_FORMULA} characters; split it into steps", LONGEST_FORMULA
        )
    _check_brackets(text)
    try:
        tree = parser.parse(text)
    except UnexpectedInput as wrong:
        raise _explained(text, wrong) from None
    return _node(tree, 1)


def _check_brackets(text: str) -> None:
    """Refuse unmatched brackets, and nesting so deep that reading it would go as deep."""
    opened: list[int] = []
    for position, sign in enumerate(text):
        if sign == "(":
            opened.append(position)
            if len(opened) > DEEPEST:
                raise _too_deep(position)
        elif sign == ")":
            if not opened:
                raise FormulaError("a closing bracket has no opening one", position)
            opened.pop()
    if opened:
        raise FormulaError("an opening bracket is never closed", opened[-1])


def _too_deep(position: int) -> FormulaError:
    return FormulaError(f"the formula is nested more than {DEEPEST} levels deep; split it into steps", position)


def _explained(text: str, wrong: UnexpectedInput) -> FormulaError:
    position = wrong.pos_in_stream
    if position is None or position < 0 or not text[position:].strip() or getattr(wrong, "token", None) == "":
        return FormulaError("the formula stops short: a number or a name must follow", len(text.rstrip()))
    found = text[position]
    wanted: set[str] = getattr(wrong, "expected", None) or getattr(wrong, "allowed", None) or set()
    if found == "," and "COMPARE" in wanted:
        return FormulaError("if() takes a comparison and two values, such as: if(depth > 0, depth, 1)", position)
    if found in "<>=!":
        return FormulaError("a comparison stands only inside if(), such as: if(depth > 0, depth, 1)", position)
    if found == ",":
        return FormulaError("a comma stands only between the values of a call, such as: max(a, b)", position)
    if found.isalnum() or found in "(._":
        return FormulaError(f"a sign is missing before {found!r}: write 2 * width, not 2 width", position)
    return FormulaError(f"{found!r} cannot stand here", position)


def _node(tree: Tree[Token], depth: int) -> Node:
    parts = tree.children
    if depth > DEEPEST:
        raise _too_deep(_position(tree))
    if tree.data == "number":
        return Number(Fraction(str(parts[0])))
    if tree.data == "name":
        return Name(str(parts[0]))
    if tree.data == "signed":
        within = _node(parts[1], depth + 1)  # type: ignore[arg-type]
        return Negate(within) if parts[0] == "-" else within
    if tree.data in ("binary", "condition"):
        return Binary(str(parts[1]), _node(parts[0], depth + 1), _node(parts[2], depth + 1))  # type: ignore[arg-type]
    return Call(str(parts[0]), tuple(_node(part, depth + 1) for part in parts[1:]))  # type: ignore[arg-type]


def _position(tree: Tree[Token]) -> int:
    first = next(tree.scan_values(lambda token: True), None)
    return first.start_pos or 0 if isinstance(first, Token) else 0
