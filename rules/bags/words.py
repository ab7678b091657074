"""Inputs that the bag rules share."""

from __future__ import annotations

from ..engine.declare import Default, Input, flag
from ..engine.kinds import LENGTH

WIDTH_OF_BAG = Input("width", "finished width", LENGTH,
    says=("wide", "width", "across", "w", "does the bag measure", "does the tote measure", "bag measure across",
        "tote measure across", "does it measure across", "will the bag measure", "will the tote measure", "does it finish",
        "will it finish", "does that finish", "will it be",
        *(f"{sides} will the {bag} {ends}" for sides in ("width and height", "width")
          for bag in ("bag", "tote") for ends in ("finish", "be", "come out")),
        "come out", "will the bag be", "will the tote be", "does the bag finish", "will the bag finish", "tote finish",
        "bag finish", "bag come out", "finished bag", "finished tote", "wide finished", "when finished",
        "width when finished", "width finished", "wide a bag",
        "wide a tote", "how big a tote", "how big a bag", "big a tote comes out", "big a bag comes out",
        "wide can the bag be", "does it end up",
        "will it end up", "what width bag", "what width of bag", "how wide a bag", "what size bag", "width bag", "widest bag",
        "sewn up", "when sewn up", "width when sewn up",
        "how wide is the bag", "how wide is the tote", "how wide was the bag", "how wide was the tote",
        "how wide will it be", "how wide will the bag be", "how wide will the tote be", "how wide does the bag come out",
        "how wide did the bag come out", "width has the bag", "width of the bag", "bag wide", "width did the bag come out",
        "did it finish", "did the bag finish", "finished bag width", "finished width of the bag",
        "finished tote width",
        "what width did it come out", "did it come out", "does it come out", "did it end up"), axis="width",
                ask="How wide is the finished bag?", example="14 in", sane="2 cm..3 m",
    practice="10 in..20 in by 1 in")
HEIGHT_OF_BAG = Input("height", "finished height", LENGTH,
    says=("high", "height", "tall", "h", *(f"width and height will the {bag} {ends}" for bag in ("bag", "tote")
          for ends in ("finish", "be", "come out")), "deep from top to bottom", "how tall will the bag stand",
             "how tall will the tote stand",
        "how tall will it stand", "how tall does it stand", "how tall does the bag stand", "how high will the bag be",
        "how tall will the bag be", "how high does it finish", "how tall does it finish", "how high will it finish",
        "how tall will it finish", "what height does it finish", "what height will it finish", "height does it finish",
        "height will it finish", "how high does the bag finish", "how tall does the bag finish", "how high will the bag finish",
        "how tall will the bag finish", "how high does it come out", "how tall does it come out", "how tall is the bag",
        "how high is the bag", "how high was the bag", "how tall was the bag", "how tall is the tote", "how high is the tote",
        "finished height", "height of the bag", "height of the tote"), axis="height",
    ask="How high is the finished bag?", example="15 in", sane="2 cm..3 m", practice="10 in..20 in by 1 in")
DEPTH_OF_BAG = Input("depth", "depth of the base", LENGTH,
    says=("deep", "depth", "base", "d", "bottom", "boxed", "gusset", "boxed base", "front to back", "base depth",
        "how deep will the bag be", "how deep will it be",
        "how deep is the bag", "how deep is the base", "how deep was the bag", "how deep will the base be",
        "depth of the base", "depth of base", "bag depth"),
    axis="depth",
    default=Default("0 in | 0 cm", "a flat bag", derived=True, when={"flat": "yes"}),
    ask='How deep is the base? Say "flat" for a bag without depth.', example="4 in", sane="0 mm..2 m",
    practice="2 in..6 in by 1 in")
FLAT_BAG = flag("flat", "flat bag", ("flat", "flat bag", "flat tote", "no depth", "without depth", "no base", "no gusset",
    "without a gusset", "no boxed base", "no boxed corners", "no box corners", "no corners", "not boxed", "unboxed"))
SEAM_OF_BAG = Input("seam", "seam allowance", LENGTH,
    says=("seam allowance", "seam allowances", "seam", "seams", "sa", "seam allowance all round", "allowance",
        "allowances"),
    default="1/2 in | 1.2 cm", because="the usual for bags (common practice)", sane="0 mm..5 cm", usual="3 mm..3 cm",
    practice="1/4 in..5/8 in by 1/8 in")
CLOTH_WIDTH = Input("cloth_width", "cloth width", LENGTH,
    says=("cloth", "fabric", "wide cloth", "wide fabric", "canvas", "cloth width", "fabric width", "width of fabric",
        "wof", "usable", "wide canvas", "width of cloth", "cotton", "linen", "denim", "calico", "oilcloth"),
    default="44 in | 112 cm", because="the usual width of cotton cloth", sane="10 cm..4 m",
    practice="36 in..60 in by 2 in", usual="50 cm..3 m")
