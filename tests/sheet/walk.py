# SPDX-License-Identifier: MIT
"""The binding walked round the edge by what the sheet says of it: each strip, less what is cut off it, what hangs
loose and a join as wide as the binding, ends where the next join is said to lie."""
import math
import re
from fractions import Fraction

from lengths import LENGTH, MM, mm_of

L = f"({LENGTH.pattern})"
PLACE = rf"(bottom|top|left|right), {L} from the (?:left|top)"


def size(length):
    return Fraction(str(length["in"])) * MM["in"]


def round_edge(words):
    """How far along the edge, from the bottom right corner by the left, a place lies, and all round."""
    along, across = (size(words.plan["size"]["finished"][side]) for side in ("along", "across"))
    corner = words.plan["binding"].get("bias")
    radius = Fraction(0)
    if corner:
        radius = size(corner["radius"]) if "radius" in corner else Fraction(0)
    saved = radius * 2 - radius * Fraction(math.pi) / 2  # what an arc is shorter than its corner

    def at(side, text):
        mm = mm_of(text)
        return {"bottom": along - mm, "left": along + across - mm - saved, "top": along + across + mm - 2 * saved,
                "right": 2 * along + across + mm - 3 * saved}[side]
    return at, 2 * (along + across) - 4 * saved


def binding(words):
    sentence = rf"Begin and close: {PLACE}\.((?: Join \d+: {PLACE}\.(?: First cut {L} off strip \d+\.)?)*)"

    def check(found):
        at, perimeter = round_edge(words)
        joins = re.findall(rf"Join \d+: {PLACE}\.(?: First cut {L} off strip \d+\.)?", found.group(3))
        cut = size(words.plan["binding"]["cut"])
        here = at(found.group(1), found.group(2))
        usable = usable_of(words)
        for i, (side, where, off) in enumerate(joins):
            step = (at(side, where) - here) % perimeter
            loose = hangs(words) if i == 0 else 0
            should = usable - (mm_of(off) if off else 0) - cut - loose
            if abs(step - should) > 2 * words.mark:
                return f"join {i + 1} should lie {float(should):.2f} mm on, not {float(step):.2f}"
            here = at(side, where)
        return None
    words.each(sentence, check)


def hangs(words):
    """As the sheet says: half the slack lies before the place where the binding closes."""
    found = re.search(rf"Lay the beginning {L} before the place", words.text)
    return mm_of(found.group(1)) if found else Fraction(0)


def usable_of(words):
    """The width of the cloth the binding is cut from: as long as its strips are said to be."""
    for step in words.plan["steps"]:
        if step["does"] == "cut-binding" and "size" in step:
            return size(step["size"]["length"])
    return Fraction(0)  # bias is one strip, without joins
