"""Drawings: every piece is there, lines keep to the page, plain is plain, SVG is XML."""

from __future__ import annotations

from fractions import Fraction
from xml.etree import ElementTree as ET

import pytest

from assistant.drawing.lay_svg import svg
from assistant.drawing.lay_text import draw
from assistant.drawing.small_text import draw_line, draw_panel
from rules.layplan.pack import lay_plan
from rules.layplan.pieces import Lay, Piece

SVG = "{http://www.w3.org/2000/svg}"


def inches(length: Fraction) -> str:
    return f"{float(length):g} in"


def tote() -> Lay:
    pieces = [
        Piece("panel", 2, Fraction(31, 2), Fraction(35, 2)),
        Piece("strap", 2, Fraction(4), Fraction(45, 2)),
        Piece("pocket", 1, Fraction(8), Fraction(9)),
    ]
    return lay_plan(pieces, 44)


def blouse(one_way: bool = False) -> Lay:
    pieces = [
        Piece("back", 1, Fraction(58), Fraction(70), on_fold=True),
        Piece("sleeve", 2, Fraction(40), Fraction(60)),
        Piece("tie", 2, Fraction(8), Fraction(70), may_turn=True),
        Piece("sail", 1, Fraction(300), Fraction(20)),
    ]
    return lay_plan(pieces, 150, folded=True, one_way=one_way)


def patches(count: int) -> Lay:
    pieces = [Piece(f"patch {n}", 1, Fraction(3 + n % 4), Fraction(2 + n % 5)) for n in range(count)]
    return lay_plan(pieces, 60, effort=20_000)


LAYS = [tote(), blouse(), patches(70)]


@pytest.mark.parametrize("columns", [20, 40, 80, 132])
@pytest.mark.parametrize("unicode", [True, False])
@pytest.mark.parametrize("lay", LAYS)
def test_no_line_is_longer_than_the_page(lay: Lay, unicode: bool, columns: int) -> None:
    assert max(map(len, draw(lay, inches, columns, unicode).splitlines())) <= columns


@pytest.mark.parametrize("columns", [20, 40, 80])
@pytest.mark.parametrize("lay", LAYS)
def test_plain_drawings_are_ascii_only(lay: Lay, columns: int) -> None:
    assert draw(lay, inches, columns, unicode=False).isascii()


@pytest.mark.parametrize("columns", [20, 40, 80])
@pytest.mark.parametrize("lay", LAYS)
def test_every_piece_is_named_with_its_size(lay: Lay, columns: int) -> None:
    words = " ".join(draw(lay, inches, columns).split())
    for piece in {placement.piece for placement in lay.placements}:
        assert piece.label in words
        assert f"{inches(piece.width)} × {inches(piece.length)}" in words


def test_every_placement_is_drawn_as_a_box_with_its_name_or_letter() -> None:
    drawing = draw(tote(), inches, 80, unicode=False)
    assert [drawing.count(word) for word in ("panel", "pocket", "A ^v")] == [2, 1, 2]
    assert "A: strap, 4 in x 22.5 in ^v" in drawing


def test_the_sheet_of_a_small_lay() -> None:
    lay = lay_plan([Piece("cuff", 2, Fraction(20), Fraction(10)), Piece("tab", 1, Fraction(10), Fraction(4))], 50)
    assert draw(lay, inches, 52, unicode=False) == "\n".join(
        [
            "selvedge            50 in across            selvedge",
            "+-------------------+----------+-------------------+",
            "|       cuff        |   B ^v   |       cuff        |",
            "|   20 in x 10 in   +----------+   20 in x 10 in   |",
            "|        ^v         |  .  .  . |        ^v         |",
            "|                   |  .  .  . |                   |",
            "+-------------------+----------+-------------------+",
            "B: tab, 10 in x 4 in ^v",
            "length 10 in",
            "offcut 10 in x 6 in",
        ]
    )


def test_arrows_tell_the_grain() -> None:
    assert "↕" in draw(blouse(), inches)
    assert "↑" in draw(blouse(one_way=True), inches)
    assert "↕" not in draw(blouse(one_way=True), inches)
    turned = lay_plan([Piece("tie", 1, Fraction(8), Fraction(70), may_turn=True)], 100)
    assert "↔" in draw(turned, inches)
    assert "<>" in draw(turned, inches, unicode=False)


def test_the_edges_the_fold_the_offcut_and_what_does_not_fit_are_said() -> None:
    drawing = draw(blouse(), inches)
    assert drawing.splitlines()[0].startswith("fold ")
    assert drawing.splitlines()[0].endswith(" selvedge")
    for words in ("75 in folded", "on the fold", "cuts 2", "offcut", "does not fit: sail, 300 in × 20 in"):
        assert words in drawing
    assert draw(tote(), inches).splitlines()[0].startswith("selvedge ")


def test_a_lay_of_nothing_still_names_what_does_not_fit() -> None:
    lay = lay_plan([Piece("sail", 1, Fraction(300), Fraction(20))], 150)
    assert draw(lay, inches) == "does not fit: sail, 300 in × 20 in"


def test_names_with_odd_characters_keep_to_one_column_each() -> None:
    lay = lay_plan([Piece("dos\x1b[31m 布 é", 1, Fraction(40), Fraction(20))], 44)
    assert "dos?[31m ? é" in draw(lay, inches)
    assert "dos?[31m ? e" in draw(lay, inches, unicode=False)


@pytest.mark.parametrize("lay", [*LAYS, lay_plan([Piece("sail", 1, Fraction(300), Fraction(20))], 150)])
def test_svg_is_xml_with_every_piece_its_size_and_its_arrow(lay: Lay) -> None:
    root = ET.fromstring(svg(lay, inches))
    assert root.tag == f"{SVG}svg"
    pieces = [rect for rect in root.iter(f"{SVG}rect") if rect.get("class") == "piece"]
    grains = [line for line in root.iter(f"{SVG}line") if line.get("class") == "grain"]
    assert len(pieces) == len(grains) == len(lay.placements)
    words = [text.text for text in root.iter(f"{SVG}text")]
    for placement in lay.placements:
        assert placement.piece.label in words
        assert f"{inches(placement.piece.width)} × {inches(placement.piece.length)}" in words
    for misfit in lay.misfits:
        assert any(word is not None and misfit.piece.label in word for word in words)


def test_svg_rectangles_lie_to_scale_inside_the_cloth() -> None:
    lay = tote()
    root = ET.fromstring(svg(lay, inches))
    rects = {kind: [r for r in root.iter(f"{SVG}rect") if r.get("class") == kind] for kind in ("cloth", "piece")}
    scale = float(rects["cloth"][0].get("width", "")) / 44
    for name, sizes in (("width", [p.width for p in lay.placements]), ("height", [p.length for p in lay.placements])):
        drawn = sorted(float(rect.get(name, "")) / scale for rect in rects["piece"])
        assert drawn == pytest.approx(sorted(map(float, sizes)), rel=1e-4)


def test_svg_one_way_arrows_have_one_head() -> None:
    starts = [line.get("marker-start") for line in ET.fromstring(svg(blouse(one_way=True), inches)).iter(f"{SVG}line")]
    assert set(starts) == {None}


def test_svg_takes_any_name() -> None:
    lay = lay_plan([Piece('<b> & "x"\x00', 1, Fraction(40), Fraction(20))], 44)
    assert '<b> & "x"?' in [text.text for text in ET.fromstring(svg(lay, inches)).iter(f"{SVG}text")]


def test_a_panel_with_its_corners_cut_out() -> None:
    drawing = draw_panel(
        Fraction(17), Fraction(10), inches, notch=(Fraction(3), Fraction(2)), label="base", columns=30, unicode=False
    )
    assert drawing.splitlines() == [
        "            17 in",
        "      +----------------+",
        "      |      base      |",
        "      |                | 10 in",
        "      |                |",
        "      +--+          +--+",
        " 2 in    +----------+",
        "      3 in",
    ]


@pytest.mark.parametrize("columns", [30, 80])
def test_a_panel_keeps_to_the_page(columns: int) -> None:
    for notch in (None, (Fraction(5, 2), Fraction(2))):
        for width, length in ((4, 25), (60, 2), (17, 17)):
            sizes = Fraction(width), Fraction(length)
            drawing = draw_panel(*sizes, inches, notch=notch, label="front", columns=columns, unicode=False)
            assert max(map(len, drawing.splitlines())) <= columns
            assert drawing.isascii()
            for words in ("front", *map(inches, sizes), *map(inches, notch or ())):
                assert words in drawing


def test_a_line_with_its_marks() -> None:
    marks = [(Fraction(0), "0 in"), (Fraction(4), "4 in"), (Fraction(8), "8 in"), (Fraction(12), "12 in")]
    assert draw_line(Fraction(12), marks, columns=42, unicode=False) == "\n".join(
        [
            "+-----------+-----------+-----------+",
            "|           |           |           |",
            "0 in        4 in        8 in        12 in",
        ]
    )


def test_crowded_marks_are_written_on_more_lines_each_once() -> None:
    marks = [(Fraction(n), f"{n} 1/8 in") for n in range(40)]
    drawing = draw_line(Fraction(40), marks, columns=80, unicode=False)
    assert max(map(len, drawing.splitlines())) <= 80
    for _, text in marks:
        assert sum(line.replace("|", " ").split("  ")[-1].strip() == text for line in drawing.splitlines()) == 1
