"""A sheet of SVG with lines, boxes and words, of a size of its own whatever it shows."""

from __future__ import annotations

from fractions import Fraction
from xml.etree import ElementTree as ET

WIDTH = 800  # SVG units across what is drawn
TALLEST = 1600  # a drawing much longer than wide is made smaller
MARGIN = 40
TEXT = 16  # the height of letters
STYLE = (
    "text{font-family:sans-serif;text-anchor:middle;dominant-baseline:middle;font-size:16px}"
    ".cloth{fill:#f4efe6;stroke:#444}.piece{fill:#cfe0ee;stroke:#222}.border{fill:#e3d3c3;stroke:#222}"
    ".line{stroke:#222;stroke-width:2;fill:none}"
)
Point = tuple[Fraction, Fraction]


class Sheet:
    """What is drawn is so wide and long, in mm, and all places are in mm from its top left corner.

    below: how many lines of words there is room for under it.
    """

    def __init__(self, title: str, width: Fraction, length: Fraction, below: int = 0) -> None:
        self._scale = min(Fraction(WIDTH) / width, Fraction(TALLEST) / length if length else Fraction(WIDTH) / width)
        self._width, self._length = width, length
        across, down = float(width * self._scale), float(length * self._scale)
        box = f"{-2 * MARGIN} {-MARGIN} {across + 4 * MARGIN:.6g} {down + (2 + below / 2) * MARGIN:.6g}"
        self._root = ET.Element("svg", xmlns="http://www.w3.org/2000/svg", viewBox=box, role="img")
        ET.SubElement(self._root, "title").text = printable(title)
        ET.SubElement(self._root, "style").text = STYLE

    def box(self, kind: str, left: Fraction, top: Fraction, width: Fraction, length: Fraction) -> None:
        corners = ((left, top), (left + width, top), (left + width, top + length), (left, top + length))
        self.shape(kind, *corners)

    def shape(self, kind: str, *corners: Point) -> None:
        """A closed outline; kind: "cloth", "piece" or "border"."""
        points = " ".join(f"{self._at(x)},{self._at(y)}" for x, y in corners)
        ET.SubElement(self._root, "polygon", {"class": kind, "points": points})

    def line(self, start: Point, end: Point) -> None:
        ends = dict(zip(("x1", "y1", "x2", "y2"), map(self._at, (*start, *end)), strict=True))
        ET.SubElement(self._root, "line", {"class": "line", **ends})

    def tick(self, along: Fraction, reach: int) -> None:
        """A short mark down from a line across the top, so many SVG units long."""
        place = self._at(along)
        ET.SubElement(self._root, "line", {"class": "line", "x1": place, "y1": "0", "x2": place, "y2": str(reach)})

    def words(self, at: Point, text: str, *, drop: float = 0) -> None:
        """Words about a place, or so many SVG units below it."""
        place = {"x": self._at(at[0]), "y": f"{float(at[1] * self._scale) + drop:.6g}"}
        ET.SubElement(self._root, "text", place).text = printable(text)

    def sides(self, width: str, length: str) -> None:
        """The width written above, the length beside, upright."""
        self.words((self._width / 2, Fraction(0)), width, drop=-MARGIN / 2)
        x, y = float(self._width * self._scale) + MARGIN / 2, float(self._length * self._scale) / 2
        turned = {"x": f"{x:.6g}", "y": f"{y:.6g}", "transform": f"rotate(-90 {x:.6g} {y:.6g})"}
        ET.SubElement(self._root, "text", turned).text = printable(length)

    def text(self) -> str:
        """The whole document."""
        return ET.tostring(self._root, encoding="unicode")

    def _at(self, length: Fraction) -> str:
        return f"{float(length * self._scale):.6g}"


def printable(text: str) -> str:
    """Text without the control characters that XML does not allow."""
    return "".join(char if char.isprintable() else "?" for char in text)
