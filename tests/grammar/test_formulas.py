"""Formulas: how they are built up, and the exact words for each way one can be wrong."""

from __future__ import annotations

import pytest

from grammar import FormulaError, Reader, read_formula
from grammar.formula import Binary, Call, Name, Negate, Node, Number

FORMULAS = {
    "1": "1",
    "2.5": "5/2",
    ".5": "1/2",
    "1/2": "(1 / 2)",
    "width": "width",
    "seam_allowance + 1": "(seam_allowance + 1)",
    "a + b * c": "(a + (b * c))",
    "a - b - c": "((a - b) - c)",
    "a / b / c": "((a / b) / c)",
    "(a + b) * c": "((a + b) * c)",
    "a ^ b ^ c": "(a ^ (b ^ c))",
    "-a ^ 2": "-((a ^ 2))",
    "2 ^ -1": "(2 ^ -(1))",
    "a * -b": "(a * -(b))",
    "+a": "a",
    "ceil((edge + joins) / usable) * strip": "(ceil(((edge + joins) / usable)) * strip)",
    "max(a, b, 3)": "max(a, b, 3)",
    "pi()": "pi()",
    "if(depth > 0, depth, 1)": "if((depth > 0), depth, 1)",
    "if(a <= b, a, b)": "if((a <= b), a, b)",
    "if(a != b, 1, 0)": "if((a != b), 1, 0)",
    "if(a = 1, if(b >= 2, 3, 4), 5)": "if((a = 1), if((b >= 2), 3, 4), 5)",
    "iffy + if_": "(iffy + if_)",
    "a\n  + b": "(a + b)",
}

BAD = {
    "": ("the formula is empty; write one such as: 2 * seam + width", 0),
    "  ": ("the formula is empty; write one such as: 2 * seam + width", 0),
    "2 +": ("the formula stops short: a number or a name must follow", 3),
    "2 width": ("a sign is missing before 'w': write 2 * width, not 2 width", 2),
    "(a + b": ("an opening bracket is never closed", 0),
    "a + b)": ("a closing bracket has no opening one", 5),
    "a < b": ("a comparison stands only inside if(), such as: if(depth > 0, depth, 1)", 2),
    "a, b": ("a comma stands only between the values of a call, such as: max(a, b)", 1),
    "a $ b": ("'$' cannot stand here", 2),
    "a * / b": ("'/' cannot stand here", 4),
    "if(a, b, c)": ("if() takes a comparison and two values, such as: if(depth > 0, depth, 1)", 4),
    "f(a < b)": ("a comparison stands only inside if(), such as: if(depth > 0, depth, 1)", 4),
    "(" * 51 + "a" + ")" * 51: ("the formula is nested more than 50 levels deep; split it into steps", 50),
    "-" * 60 + "a": ("the formula is nested more than 50 levels deep; split it into steps", 50),
    "1" * 2001: ("the formula has more than 2000 characters; split it into steps", 2000),
}


def tree(of: Node) -> str:
    match of:
        case Number(value):
            return str(value)
        case Name(name):
            return name
        case Negate(within):
            return f"-({tree(within)})"
        case Binary(op, left, right):
            return f"({tree(left)} {op} {tree(right)})"
        case Call(name, args):
            return f"{name}({', '.join(map(tree, args))})"


@pytest.mark.parametrize("text", FORMULAS)
def test_a_formula_is_built_up_in_the_usual_order(text: str) -> None:
    assert tree(read_formula(text)) == FORMULAS[text]


def test_a_kept_table_reads_formulas_alike(reader: Reader) -> None:
    assert all(reader.read_formula(text) == read_formula(text) for text in FORMULAS)


@pytest.mark.parametrize("text", BAD)
def test_a_wrong_formula_is_told_in_plain_words(text: str) -> None:
    with pytest.raises(FormulaError) as caught:
        read_formula(text)
    assert (caught.value.message, caught.value.position) == BAD[text]
    assert str(caught.value) == f"{BAD[text][0]} (at position {BAD[text][1]})"


def test_a_long_chain_is_refused_not_run_into_the_ground() -> None:
    with pytest.raises(FormulaError, match="50 levels deep"):
        read_formula("+".join(["a"] * 900))
