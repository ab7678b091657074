"""A lay drawn as SVG: the cloth, its pieces with sizes and grain arrows, and the offcut."""

from __future__ import annotations

from fractions import Fraction
from xml.etree import ElementTree as ET

from assistant.drawing.canvas import Formatter
from assistant.drawing.sheet import printable
from rules.layplan.offcuts import Offcut, offcut
from rules.layplan.pieces import Lay, Placement

CLOTH_WIDTH = 800  # SVG units across the cloth
MARGIN = 40
TEXT, EASY_TEXT, LEAST_TEXT = 16, 11, 5  # heights of letters: the usual, still easy to read, the least drawn
LETTER_WIDTH = 0.6  # of a letter's height, on average
STYLE = (
    "text{font-family:sans-serif;text-anchor:middle;dominant-baseline:middle}"
    ".cloth{fill:#f4efe6;stroke:#444}.piece{fill:#cfe0ee;stroke:#222}"
    ".offcut{fill:#fff;stroke:#888;stroke-dasharray:6 4}.grain{stroke:#222;stroke-width:1.5;fill:none}"
    ".fold{stroke:#b03030;stroke-width:4;stroke-dasharray:12 6}"
)


def svg(lay: Lay, formatter: Formatter) -> str:
    """The lay as one SVG document, across the page as across the cloth. formatter: writes a length."""
    return ET.tostring(_Drawing(lay, formatter).root, encoding="unicode")


class _Drawing:
    def __init__(self, lay: Lay, formatter: Formatter) -> None:
        self._lay, self._formatter = lay, formatter
        self._scale = Fraction(CLOTH_WIDTH) / lay.lay_width
        self._notes = [
            printable(f"does not fit: {m.piece.label}, {self._size(m.piece.width, m.piece.length)}")
            for m in lay.misfits
        ]
        self.root = self._sheet()
        self._cloth()
        if lay.placements:
            self._offcut(offcut(lay))
        for placement in lay.placements:
            self._piece(placement)
        for row, note in enumerate(self._notes, 2):
            self._text(self.root, CLOTH_WIDTH / 2, self._scaled(lay.length) + MARGIN * row / 2, note, TEXT)

    def _sheet(self) -> ET.Element:
        width = CLOTH_WIDTH + 2 * MARGIN
        height = self._scaled(self._lay.length) + MARGIN * (2 + len(self._notes) / 2)
        box = f"{-MARGIN} {-MARGIN} {width} {height:.6g}"
        root = ET.Element("svg", xmlns="http://www.w3.org/2000/svg", viewBox=box, role="img")
        ET.SubElement(root, "title").text = f"Lay plan, {self._size(self._lay.lay_width, self._lay.length)}"
        ET.SubElement(root, "style").text = STYLE
        head = ET.SubElement(
            ET.SubElement(root, "defs"), "marker", id="head", viewBox="0 0 10 10", refX="9", refY="5",
            markerWidth="7", markerHeight="7", orient="auto-start-reverse",
        )  # fmt: skip
        ET.SubElement(head, "path", d="M0 0 10 5 0 10z")
        return root

    def _cloth(self) -> None:
        lay, bottom = self._lay, self._scaled(self._lay.length)
        self._rect(self.root, "cloth", 0, 0, CLOTH_WIDTH, bottom)
        width = f"{self._formatter(lay.lay_width)}{' folded' if lay.folded else ''}"
        self._text(self.root, CLOTH_WIDTH / 2, -MARGIN / 2, width, TEXT)
        self._text(self.root, CLOTH_WIDTH / 2, bottom + MARGIN / 2, f"length {self._formatter(lay.length)}", TEXT)
        self._upright(-MARGIN / 2, bottom / 2, "fold" if lay.folded else "selvedge")
        self._upright(CLOTH_WIDTH + MARGIN / 2, bottom / 2, "selvedge")
        if lay.folded:
            ET.SubElement(self.root, "line", {"class": "fold", "x1": "0", "y1": "0", "x2": "0", "y2": f"{bottom:.6g}"})

    def _offcut(self, at: Offcut | None) -> None:
        if at is None:
            return
        group = ET.SubElement(self.root, "g")
        x, y, width, height = self._place(at)
        self._rect(group, "offcut", x, y, width, height)
        times = f"{at.copies} of " if at.copies > 1 else ""
        size = times + self._size(at.opened_width, at.length)
        self._words(group, (x, y, width, height), ["offcut", size])

    def _piece(self, placement: Placement) -> None:
        """Its outline, name, size and grain arrow; the whole of it as a tooltip, for small ones."""
        x, y, width, height = self._place(placement)
        lines = [printable(placement.piece.label), self._size(placement.piece.width, placement.piece.length)]
        if placement.copies > 1:
            lines.append(f"cuts {placement.copies}")
        if placement.on_fold:
            lines.append("on the fold")
        group = ET.SubElement(self.root, "g")
        ET.SubElement(group, "title").text = ", ".join(lines)
        self._rect(group, "piece", x, y, width, height)
        self._grain(group, (x, y, width, height), placement.turned)
        self._words(group, (x, y, width, height), lines)

    def _grain(self, group: ET.Element, box: tuple[float, float, float, float], turned: bool) -> None:
        """An arrow beside the words, along the piece's own grain; a head at both ends when either way will do."""
        x, y, width, height = box
        if turned:
            ends = (x + width * 0.1, y + height * 0.12, x + width * 0.9, y + height * 0.12)
        else:
            ends = (x + width * 0.12, y + height * 0.9, x + width * 0.12, y + height * 0.1)
        names = dict(zip(("x1", "y1", "x2", "y2"), (f"{end:.6g}" for end in ends), strict=True))
        line = ET.SubElement(group, "line", {"class": "grain", "marker-end": "url(#head)", **names})
        if not self._lay.one_way:
            line.set("marker-start", "url(#head)")

    def _words(self, group: ET.Element, box: tuple[float, float, float, float], lines: list[str]) -> None:
        """Lines in the middle of a box, as large as go in; upright when the box is narrow."""
        x, y, width, height = box
        longest = max(map(len, lines)) * LETTER_WIDTH
        flat = min(TEXT, width * 0.72 / longest, height * 0.72 / (len(lines) * 1.2))
        upright = min(TEXT, height * 0.72 / longest, width * 0.72 / (len(lines) * 1.2))
        middle_x, middle_y = x + width / 2, y + height / 2
        if flat < EASY_TEXT and upright > flat:
            turn = f"rotate(-90 {middle_x:.6g} {middle_y:.6g})"
            group = ET.SubElement(group, "g", transform=turn)
            flat = upright
        size = max(LEAST_TEXT, flat)
        for row, line in enumerate(lines):
            self._text(group, middle_x, middle_y + (row - (len(lines) - 1) / 2) * size * 1.2, line, size)

    def _upright(self, x: float, y: float, words: str) -> None:
        group = ET.SubElement(self.root, "g", transform=f"rotate(-90 {x:.6g} {y:.6g})")
        self._text(group, x, y, words, TEXT)

    def _text(self, group: ET.Element, x: float, y: float, words: str, size: float) -> None:
        ET.SubElement(group, "text", {"x": f"{x:.6g}", "y": f"{y:.6g}", "font-size": f"{size:.4g}"}).text = words

    def _rect(self, group: ET.Element, kind: str, x: float, y: float, width: float, height: float) -> None:
        numbers = {"x": x, "y": y, "width": width, "height": height}
        ET.SubElement(group, "rect", {"class": kind, **{name: f"{n:.6g}" for name, n in numbers.items()}})

    def _place(self, at: Placement | Offcut) -> tuple[float, float, float, float]:
        return self._scaled(at.x), self._scaled(at.y), self._scaled(at.width), self._scaled(at.length)

    def _scaled(self, length: Fraction) -> float:
        return float(length * self._scale)

    def _size(self, width: Fraction, length: Fraction) -> str:
        return f"{self._formatter(width)} × {self._formatter(length)}"
