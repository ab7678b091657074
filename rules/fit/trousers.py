"""Crotch depth of trousers, from a seated measure or from two legs."""

from __future__ import annotations

from ..engine.declare import Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import LENGTH
from ..engine.rounding import BODY
from .words import told

PANTS_GUIDE = "Guide C-209, Measurements for Fitting Pants, New Mexico State University Cooperative Extension, 2003"
CROTCH_DEPTH = Rule(
    topic="crotch depth",
    family="fit",
    says=(
        "crotch depth",
        "trouser rise",
        "rise",
        "crotch",
        "body rise",
        "depth of crotch",
        "seat depth",
        "crotch line",
    ),
    about="How far below the waist the crotch line of trousers lies.",
    inputs=(
        Input(
            "seated",
            "seated side measure",
            LENGTH,
            says=(
                "seated",
                "sitting",
                "sit",
                "waist to chair",
                "chair",
                "to the chair",
                "to the seat",
                "waist to seat",
                "side measure",
                "seated measure",
                "sitting measure",
            ),
            axis="length",
            default=Default("=outside - inside", "Take the inside leg from the outside leg", derived=True),
            sane="5 cm..80 cm",
        ),
        Input(
            "outside",
            "outside leg",
            LENGTH,
            says=(
                *told("outside leg"), "side length", "outseam", "outer leg", "waist to floor", "side seam",
                "outside", "outer", "outside seam",
            ),
            ask="What is the side measure from waist to chair, sitting (or the outside and the inside leg)?",
            example="sitting 27 cm",
            sane="20 cm..160 cm",
            practice="95 cm..110 cm by 1 cm",
        ),
        Input(
            "inside",
            "inside leg",
            LENGTH,
            says=(*told("inside leg"), "inseam", "inner leg", "inside leg seam", "inside", "inner", "inside seam"),
            ask="What is the inside leg?",
            example="76 cm",
            sane="10 cm..120 cm",
            practice="70 cm..82 cm by 1 cm",
        ),
        choice(
            "size",
            "size of the hip",
            {
                "hip under 36 in": ("hip under 36", "small hips", "slim hips"),
                "hip over 38 in": ("hip over 38", "large hips", "full hips", "fuller hips"),
                "not said": (),
            },
            default="not said",
            because="the ease is taken as 1/2 in (1.5 cm)",
        ),
        Input(
            "ease",
            "ease",
            LENGTH,
            says=("ease", "with", "plus", "crotch ease"),
            default=(
                Default("1 in", "published for hips over 38 in", when={"size": "hip over 38 in"}),
                Default("1/2 in", "published for hips under 36 in", when={"size": "hip under 36 in"}),
                Default(
                    "1/2 in | 1.5 cm",
                    "the usual; the published guide takes 1/2 in under a 36 in hip and 1 in over 38 in",
                    when={"size": "not said"},
                ),
            ),
            sane="0 cm..10 cm",
            practice="1/2 in..1 in by 1/4 in",
        ),
    ),
    steps=(
        Step(
            "depth",
            "Add the ease to the seated measure",
            "seated + ease",
            LENGTH,
            rounding=BODY,
            label="crotch depth",
            says=("crotch depth", "rise", "depth", "how deep", "how long", "crotch line"),
            axis="depth",
            stated=("crotch depth", "rise", "rise with ease", "crotch depth with ease", "crotch depth of", "rise of"),
        ),
        Step(
            "sits",
            "What the inside leg leaves of the outside leg is the seated measure",
            "outside - inside",
            LENGTH,
            rounding=BODY,
            label="seated measure",
            says=("seated measure", "sitting measure", "difference of the legs", "between the two legs", "leg difference",
                *(f"{would} i measure {down}" for would in ("would", "should") for down in ("sitting", "seated", "sitting down"))),
        ),
    ),
    answers=("depth", "sits"),
    headline=("Draw the crotch line {depth} below the waist.",),
    source=PANTS_GUIDE,
    refusals=(
        Refusal(
            "seated <= 0",
            "the inside leg is as long as the outside leg or longer, which leaves nothing above the crotch: see that the "
            "two are not changed round. Such as: outside leg 104 cm, inside leg 77 cm",
        ),
    ),
    cautions=(Caution("Sit on a hard chair, and measure from the waist down the side to the seat of the chair."),),
    examples=(
        "crotch depth: sitting measure 27 cm -> 28.5 cm",
        "outside leg 42 in, inside leg 31 in, crotch depth with 1/2 in ease -> 11 1/2 in",
        "trouser rise, waist to chair 11 in, full hips -> 12 in",
    ),
    related=("ease",),
)
