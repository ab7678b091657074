"""The cloth for a whole quilt, each part worked by its own rule."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Given, Request
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from ..engine.run import Impossible, Needs, Run
from .binding import JOINS
from .quilt_size import ALL_ROUND, BORDER, BORDER_ROUND, OUTER, OUTSIDE, SASH, layout
from .words import ACROSS, BLOCK, DOWN, SEAM, UNFINISHED_BLOCK, USABLE_WIDTH


def _part(run: Run, topic: str, heading: str, given: Mapping[str, Any]) -> Run:
    """Another rule at work on a part of the quilt; its working and what it assumed join the whole quilt's."""
    from ..catalogue import all_rules  # here, since the catalogue reads this module too

    rule = all_rules()[topic]
    values = {name: _given(run, value) for name, value in given.items()}
    shop_step = run.request.given.get("shop_step")
    if shop_step is not None:
        values["shop_step"] = shop_step
    made = Run(rule, Request(topic, given=values, system=run.system, currency=run.request.currency))
    for refusal in rule.refusals:
        if Run(rule, made.request).holds_formula(refusal.when) and made.holds(refusal.choices):
            raise Impossible(f"{topic}: {refusal.text}")
    run.say(heading)
    return made


def _given(run: Run, value: Any) -> Given:
    if isinstance(value, str):
        return Given(value, "text", value)
    if isinstance(value, int):
        return Given(Fraction(value), "1", str(value))
    unit = run.unit_of(LENGTH)
    return Given(value, unit, run.show_in(value, unit))


def _take(run: Run, made: Run, *names: str) -> list[Any]:
    """Results of a part, exact, those that it has; its lines and assumptions are told once."""
    found = []
    for name in names:
        try:
            found.append(made.get(name))
        except Needs:
            found.append(None)
    run.lines += made.lines
    told = {value.name for value in run.assumed}
    run.assumed += [value for value in made.assumed if value.name not in told]
    return found


def _whole_quilt(run: Run) -> Outcome:
    """Every part in the order it is sewn: blocks, sashing, borders, binding, backing, wadding."""
    across, down, block, sash = int(run.get("across")), int(run.get("down")), run.get("block"), run.get("sash")
    cloth = {"usable": run.get("usable"), "seam": run.get("seam")}
    values: dict[str, Any] = {}
    size = _part(run, "quilt size", "The finished quilt", {"across": across, "down": down, "block": block, "sash": sash,
                 "border": run.get("border"), "outer": run.get("outer"),
                 "all_round": run.get("all_round")})  # fmt: skip
    values["width"], values["length"], values["blocks"] = _take(run, size, "width", "length", "blocks")
    blocks = _part(run, "strips and patches", "Blocks, counted as plain squares of their cut size",
                   {"count": across * down, "finished": block, **cloth})  # fmt: skip
    (plain,) = _take(run, blocks, "cloth")
    values["block_cloth"] = plain * (1 + run.get("piecing"))
    if sash:
        sashing = _part(run, "sashing and cornerstones", "Sashing", {"across": across, "down": down, "block": block,
            "sash": sash,
                        "all_round": run.get("all_round"), **cloth})  # fmt: skip
        values["sash_cloth"], values["stone_cloth"] = _take(run, sashing, "cloth", "stone_cloth")
    _borders(run, values, cloth)
    quilt = {"width": values["width"], "length": values["length"]}
    binding = _part(run, "binding strips", "Binding", {**quilt, "strip": run.get("strip"), "joins": run.get("joins"),
        "usable": cloth["usable"]})
    values["binding_cloth"], values["binding_strips"] = _take(run, binding, "cloth", "strips")
    backing = _part(run, "backing", "Backing", {**quilt, "over": run.get("over"), "usable": run.get("backing_width")})
    values["backing_cloth"], values["panels"] = _take(run, backing, "cloth", "panels")
    wadding = _part(run, "wadding (batting)", "Wadding", {**quilt, "over": run.get("over")})
    *_, pack = _take(run, wadding, "wide", "long", "pack")
    unit = run.unit_of(LENGTH)
    wide, long = (wadding.show_in(wadding.rounded(name), unit) for name in ("wide", "long"))
    values["wadding"] = f"{wide} by {long}; pack: {pack}"
    values = {name: value for name, value in values.items() if value is not None}
    values["cloth"] = sum((run.round_step(_step(run, name), values[name]) for name in PARTS if name in values),
        Fraction(0))
    drawn = layout(run)
    return replace(drawn, values={**drawn.values, **values})


def _borders(run: Run, values: dict[str, Any], cloth: Mapping[str, Fraction]) -> None:
    """Borders in turn, each round the quilt as it then lies, raw edge to raw edge."""
    sides = [values["width"], values["length"]]
    bands = [("border_cloth", "Border", run.get("border")), ("outer_cloth", "Second border", run.get("outer"))]
    inner = [side - 2 * sum((width for *_, width in bands), Fraction(0)) + 2 * cloth["seam"] for side in sides]
    for name, heading, width in bands:
        if width:
            made = _part(run, "borders", heading, {"width": inner[0], "length": inner[1], "border": width, **cloth})
            (values[name],) = _take(run, made, "cloth")
            inner = [side + 2 * width for side in inner]


def _step(run: Run, name: str) -> Step:
    step = run.rule.step(name)
    assert step is not None
    return step


def _cloth(name: str, label: str, *says: str) -> Step:
    # so short a length told is the width of a border or a sash
    return Step(name, "", rounding=BUY_CLOTH, label=label, says=says, sane="30 cm..100 m")


PARTS = ("block_cloth", "sash_cloth", "stone_cloth", "border_cloth", "outer_cloth", "binding_cloth", "backing_cloth")

# The backing has a width of its own here.
TOP_WIDTH = replace(USABLE_WIDTH, says=tuple(words for words in USABLE_WIDTH.says if words not in ("wide backing",
    "wide")))

QUILT_YARDAGE = Rule(
    topic="quilt yardage",
    family="quilting",
    says=("quilt yardage", "whole quilt", "whole top", "sampler", "sampler quilt", "everything for a quilt",
          "shopping list", "fabric for a quilt", "cloth for a quilt", "yardage for a quilt", "all the fabric",
          "fabric for the whole quilt", "everything", "what fabric do i need", "quilt requirements",
          "fabric requirements", "yardage of a whole top", "yardage", "what do i need to buy", "fabric for the whole", *BORDER_ROUND),
    about="The cloth for a whole quilt in one question: blocks, sashing, borders, binding, backing and wadding, "
          "each as it is bought.",
    inputs=(
        BLOCK, ACROSS, DOWN, SASH, BORDER, OUTER, ALL_ROUND, OUTSIDE, TOP_WIDTH,
        Input("strip", "binding strip width", LENGTH, says=("binding", "binding strips", "strips", "binding strip",
              "wide binding"), default="2 1/2 in | 6.5 cm", because="the usual double binding", sane="1 cm..30 cm",
              practice="2 in..3 in by 1/4 in", spoken=True),
        JOINS,
        Input("over", "backing and wadding, extra on each side", LENGTH, says=("over", "extra on each side",
              "each side", "over each side", "over on each side", "backing over", "spare all round",
              "over all round"), default="4 in | 10 cm", because="what most quilters and longarm services ask for",
              sane="0 cm..60 cm", practice="2 in..6 in by 1 in", spoken=True),
        Input("backing_width", "backing width", LENGTH, says=("backing", "wide backing", "backing fabric",
              "for the backing", "in backing"), default=Default("=usable",
              "The backing is of cloth as wide as the rest", derived=True), sane="10 cm..4 m",
              practice="40 in..108 in by 2 in", spoken=True),
        Input("piecing", "extra for piecing the blocks", PERCENT, says=("piecing", "for piecing", "extra", "pieced",
              "for seams", "more for piecing"), default=Default("0 %", derived=True), sane="0 %..200 %",
              practice="20 %..50 % by 10 %"),
        SEAM,
        UNFINISHED_BLOCK,
    ),
    steps=(
        Step("cloth", "All of it together", rounding=BUY_CLOTH, label="cloth in all", says=("how much fabric",
             "in all", "altogether", "total", "fabric", "yardage", "total yardage", "how many yards",
             "how much cloth", "material")),
        _cloth("block_cloth", "cloth for the blocks", "blocks", "fabric for the blocks", "block fabric",
        "for the blocks"),
        _cloth("sash_cloth", "cloth for the sashing", "sashing", "fabric for the sashing", "sashing fabric",
        "for the sashing"),
        _cloth("stone_cloth", "cloth for the cornerstones", "cornerstones", "fabric for the cornerstones"),
        _cloth("border_cloth", "cloth for the border", "border", "borders", "fabric for the border", "border fabric",
        "for the borders"),
        _cloth("outer_cloth", "cloth for the second border", "second border", "outer border"),
        _cloth("binding_cloth", "cloth for the binding", "binding", "fabric for the binding", "binding fabric",
        "for the binding"),
        Step("binding_strips", "", kind=COUNT, rounding=COUNT_UP, noun="strip", label="binding strips",
             says=("how many binding strips", )),
        _cloth("backing_cloth", "cloth for the backing", "backing", "fabric for the backing", "backing fabric",
        "for the backing"),
        Step("panels", "", kind=COUNT, rounding=COUNT_UP, noun="panel", label="backing panels",
             says=("how many panels", )),
        Step("wadding", "", kind=TEXT, label="wadding", says=("wadding", "batting", "how much batting",
             "how much wadding")),
        Step("width", "", rounding=CUT, label="quilt width", says=("how big", "quilt size", "size")),
        Step("length", "", rounding=CUT, label="quilt length"),
        Step("blocks", "", kind=COUNT, rounding=COUNT_UP, noun="block", label="blocks", says=("how many blocks", )),
        Step("layout", "", kind=TEXT, label="layout"),
    ),
    answers=("cloth", *PARTS, "binding_strips", "panels", "wadding", "width", "length", "blocks", "layout"),
    headline=(
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, sashing {sash_cloth}, cornerstones "
        "{stone_cloth}, border {border_cloth}, second border {outer_cloth}, binding {binding_cloth}, backing "
        "{backing_cloth}; wadding {wadding}. In all {cloth} of cloth.",
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, sashing {sash_cloth}, cornerstones "
        "{stone_cloth}, border {border_cloth}, binding {binding_cloth}, backing {backing_cloth}; wadding {wadding}. "
        "In all {cloth} of cloth.",
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, sashing {sash_cloth}, cornerstones "
        "{stone_cloth}, binding {binding_cloth}, backing {backing_cloth}; wadding {wadding}. In all {cloth} of cloth.",
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, border {border_cloth}, second border "
        "{outer_cloth}, binding {binding_cloth}, backing {backing_cloth}; wadding {wadding}. In all {cloth} of cloth.",
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, border {border_cloth}, binding "
        "{binding_cloth}, backing {backing_cloth}; wadding {wadding}. In all {cloth} of cloth.",
        "Buy, for a quilt {width} by {length}: blocks {block_cloth}, binding {binding_cloth}, backing "
        "{backing_cloth}; wadding {wadding}. In all {cloth} of cloth.",
    ),
    sizes=(("across", "down"),),
    home="in",
    source=COMMON_PRACTICE,
    algorithm=_whole_quilt,
    no_unknown=("block", "across", "down", "sash", "border", "outer", "usable", "strip", "joins", "over",
        "backing_width", "piecing", "seam", "unfinished"),
    cautions=(
        Caution("The blocks are counted as plain squares: pieced ones take more, by the seams inside them; say how "
                "much, such as “with 25 % for piecing”", when="piecing = 0"),
    ),
    examples=(
        "yardage for a 5 x 6 sampler of 12 in blocks with 2 in sashing and a 4 in border -> 13 5/8 yd; 3 1/2 yd; 7 "
        "yd; 76 in; 90 in",
        "fabric for a quilt of 4 x 5 blocks 10 in, no sashing, 3 in border, how much backing -> 3 yd",
        "shopping list for a quilt 5 by 7 blocks of 20 cm, 5 cm sashing, metric -> 6.3 m; 120 cm; 170 cm",
    ),
    related=("quilt size", "backing", "binding strips"),
)
