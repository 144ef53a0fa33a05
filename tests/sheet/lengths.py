# SPDX-License-Identifier: MIT
"""Lengths as they are printed, reckoned in exact fractions: nothing of the program is asked."""
import re
from fractions import Fraction

LENGTH = re.compile("(?:[aA] scant |[aA] generous )?\u2212?(?:(?:\\d+ )?\\d+/\\d+|\\d+(?:\\.\\d+)?) (?:in|mm)\\b")
MM = {"in": Fraction("25.4"), "mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "yd": Fraction("914.4")}


def number(text):
    """7, 7 1/2, 1/2, 7.5."""
    return sum((Fraction(part) for part in text.split()), Fraction())


def mm_of(text):
    """The millimetres of "a scant 7 1/8 in", the lean left out."""
    text = re.sub("^[aA] (scant|generous) ", "", text)
    sign = -1 if text.startswith("\u2212") else 1
    figure, unit = text.lstrip("\u2212").rsplit(" ", 1)
    return sign * number(figure) * MM[unit]


def within(text, mm, mark):
    """Is what is printed nearer to `mm` than one mark of the ruler?"""
    return abs(mm_of(text) - mm) < mark


def mark_of(project):
    """The finest mark of her ruler, in millimetres."""
    usual = "1/16 in" if project["system"] == "inch" else "1 mm"
    return mm_of(project.get("finest", usual))


def entered(project):
    """Every length that was entered, as written."""
    found = set()

    def walk(part):
        if isinstance(part, dict):
            for one in part.values():
                walk(one)
        elif isinstance(part, list):
            for one in part:
                walk(one)
        elif isinstance(part, str) and LENGTH.fullmatch(part):
            found.add(part)
    walk(project)
    return found
