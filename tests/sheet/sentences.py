# SPDX-License-Identifier: MIT
"""What the sheet says beyond the plan file, sentence by sentence: reckoned anew here from what was entered and from
the plan's lengths, in exact fractions, and taken out of the text. What is only a word of caution or tells of the
drawing itself stands in `PLAIN` with its reason."""
import math
import re
from fractions import Fraction

import walk
from lengths import LENGTH, MM, mark_of, mm_of, number, within

L = f"({LENGTH.pattern})"

# Sentence and why its numbers need no plan.
PLAIN = [
    (r"it falls well from (?:3 in|75 mm)", "how far an edge hangs to fall softly; common practice, no published source"),
    (r"[dD]rawn 1 : \d+", "how many times smaller a drawing is; the drawing's own"),
    (r"print again at 100 %", "the printer's setting"),
    (r"never under 6 in \(15 cm\), off lap|this tablet 6 in \(15 cm\) off",
     "caution about magnets, both units in one breath: US FDA 2021, on phones"),
    (r"Keep it 12 in \(30 cm\) from candles", "caution, both units in one breath: common practice"),
    (r"[Ff]old the strip up at 45°", "half a right angle: the mitre's own"),
    (r"holds 8 cloths and the batting, against 4: pare the batting from the last (1/2 in|12 mm)",
     "layers at a crossing, twice those of a seam of two turned edges; common practice"),
    (r"Trim and fold 1 2 3 4 |on cut side [12],|on side 1(?: or 3)?\.|(?<= )[1-4]\. (?=" + LENGTH.pattern + " on )",
     "the block's four sides in the order they are cut"),
    (r"[Pp]lace \d+|off strip \d+\.|Join \d+:|\d layers|[Kk]it \d+ of", "counting on"),
]


class Words:
    """The text, out of which sentences are taken; what is wrong with them."""

    def __init__(self, text, plan, project):
        self.text, self.plan, self.project, self.wrong = text, plan, project, []
        self.mark, self.inch = mark_of(project), project["system"] == "inch"

    def each(self, pattern, check):
        """Takes out every sentence; `check` gives what is wrong with one, or nothing."""
        def told(found):
            fault = check(found)
            if fault:
                self.wrong.append(f"{fault}: {found.group()!r}")
            return " "
        self.text = re.sub(pattern, told, self.text)

    def length(self, text, mm, what):
        return None if within(text, mm, self.mark) else f"{what} should be {float(mm / MM['in' if self.inch else 'mm']):.4f}"


def size(pair, side):
    """A pair of the plan file in millimetres; it is told to six places."""
    return Fraction(str(pair[side]["in"])) * MM["in"]


def sold(text):
    """Millimetres of "2 3/8 yd", "1.2 m"."""
    figure, unit = text.rsplit(" ", 1)
    return number(figure) * MM[unit]


def cloth_rows(words):
    """To buy: enough for the strips and the straightening, not a step more than needed, at its price."""
    steps = {"yd": MM["yd"] / 8, "cm": MM["cm"] * 10, "m": MM["cm"] * 10}
    costs = []
    row = (r"((?:\d+ )?\d+/\d+ yd|\d+ yd|\d+\.\d+ m) ([^¤]{1,80}?) ((?:from what you have: [^;]*; )?)"
           rf"((?:\d+ × {LENGTH.pattern}(?:, )?)+), and {L} to straighten(?:; (?P<left>{LENGTH.pattern}) left over)?\. "
           r"(Proven least: no way of cutting buys less\.|At most (?P<over>[\d.]+) % above the least possible\."
           r"|A piece is wider than this cloth: it has to be pieced, and no least length is known\.)"
           r" Waste (?P<waste>\d+) %\.(?: Costs (?P<costs>\d+\.\d\d)\.)?")

    def check(found):
        name, bought = found.group(2), sold(found.group(1))
        needed = mm_of(found.group(5)) + sum(int(times) * mm_of(high) for times, high in
                                             re.findall(rf"(\d+) × {L}", found.group(4)))
        step = steps[found.group(1).rsplit(" ", 1)[1]]
        slack = words.mark * sum(int(times) for times in re.findall(r"(\d+) ×", found.group(4)))
        if not needed - slack <= bought < needed + step + slack:
            return "bought is not what is needed, up to how it is sold"
        if found["left"] and abs(bought - needed - mm_of(found["left"])) > slack + words.mark:
            return "what is left over"
        if not 0 <= int(found["waste"]) <= 100:
            return "waste"
        if not found["costs"]:
            return None
        costs.append(int(found["costs"].replace(".", "")))
        unit = MM["yd"] if words.inch else MM["m"]
        prices = [Fraction(str(one["price"])) for one in words.project["cloths"]
                  if re.fullmatch(re.escape(one["name"]) + r"(?: \(.*\))?", name) and one.get("price") is not None]
        cents = {math.floor(price * 100 * bought / unit + Fraction(1, 2)) for price in prices}
        return None if costs[-1] in cents else f"costs should be one of {cents}"
    words.each(row, check)
    strips = [{step["size"]["width"]["shows"], step["size"]["length"]["shows"]}
              for step in words.plan["steps"] if "size" in step]

    def owned(found):
        """Nothing to buy: the strips are as high as something that is cut."""
        high = {high for _, high in re.findall(rf"(\d+) × {L}", found.group())}
        return None if all(any(one in sides for sides in strips) for one in high) else "nothing is that high"
    words.each(rf"from what you have: (?:\d+ × {LENGTH.pattern}(?:, )?)+\. What you have yields all of it: nothing to buy\.",
               owned)
    words.each(r"(?:All cloths|Cloths with a price): (\d+\.\d\d)",
               lambda found: None if int(found.group(1).replace(".", "")) == sum(costs) else f"the sum is {sum(costs)}")


def layouts(words):
    """How the cloths are cut: of each size as many pieces as the steps cut. The trial is cut once, from a strip of its
    own; a band may be cut up on the drawing already."""
    piece = rf"(?:\d+ × {LENGTH.pattern}(?: × {LENGTH.pattern})?|{LENGTH.pattern} left over)"
    strip = rf"(\d+) × {L}: ({piece}(?:, {piece})*)"
    laid = {}

    def gather(found):
        for times, high, pieces in re.findall(strip, found.group()):
            for one in re.findall(rf"(\d+) × {L}(?: × {L})?", pieces):
                key = frozenset((one[1], one[2] or high))
                laid[key] = laid.get(key, 0) + int(times) * int(one[0])
    words.each(rf"(?:Piece \d of what you have )?{strip}(?: {strip})* (?=drawn 1 : )", gather)
    steps = [step for step in words.plan["steps"] if "size" in step and step["station"] == "cut"]
    panels = [mm_of(side["shows"]) for step in steps if step["does"] == "cut-backing" for side in step["size"].values()]
    for sides, count in laid.items():
        cut = [step for step in steps
               if frozenset((step["size"]["width"]["shows"], step["size"]["length"]["shows"])) == sides]
        # Shorts may be harvested from the gaps of the hoop strips instead.
        least = sum(step["count"] for step in cut
                    if not step["trial"] and step["does"] not in ("cut-band", "harvest-short"))
        if not cut and any(mm_of(side) % panel == 0 for side in sides for panel in panels):
            continue  # a backing wider than its cloth, in panels of the whole width
        if not cut or not least <= count <= sum(step["count"] for step in cut):
            words.wrong.append(f"{count} of {sorted(sides)} are laid out, the steps cut {least} and the trial's")


def loose(words):
    """Half the slack of the binding hangs loose; eight inches, 200 mm, unless entered."""
    slack = mm_of(words.project.get("slack", "8 in" if words.inch else "200 mm"))
    words.each(rf"Lay the beginning {L} before the place",
               lambda found: words.length(found.group(1), slack / 2, "what lies before the closing join"))
    words.each(rf"Leave {L} to both sides of that place",
               lambda found: None if found.group(1) == ("6 in" if words.inch else "150 mm")
               else "6 in | 150 mm stay open to both sides (common practice, no published source)")


def curved(words):
    """A curved edge: how long it is, with π from the library; bias strips long enough; which arc clears the
    stippling, as the corner's diagonal leaves it."""
    bias = (words.plan.get("binding") or {}).get("bias")
    if not bias:
        return
    radius = size(bias, "radius") if "radius" in bias else Fraction(0)
    along, across = (size(words.plan["size"]["finished"], side) for side in ("along", "across"))
    whole = 2 * (along + across) - 8 * radius + 2 * Fraction(math.pi) * radius
    words.each(rf"The edge is {L} round", lambda found: words.length(found.group(1), whole, "the way round"))
    length = size(words.plan["binding"], "length")

    def strips(found):
        each = mm_of(found.group(2)) * Fraction(math.sqrt(2))
        return None if int(found.group(1)) * each >= length else f"they are shorter than {float(length)} mm"
    words.each(rf"Or as (\d+) strips? on the bias, from {L} across the cloth", strips)
    outside = mm_of(words.project["edge"]["outside"])
    words.each(rf"Up to {L} it would clear it",
               lambda found: words.length(found.group(1), outside * Fraction(2 + math.sqrt(2)), "what clears"))


def both_units(words):
    """In a class form each size stands in the other unit too: the same length, to 1 mm or 1/8 in."""
    mark = Fraction(1) if words.inch else MM["in"] / 8

    def check(found):
        one, other = found.groups()[:2], found.groups()[2:]
        if one[0].rsplit(" ", 1)[1] == other[0].rsplit(" ", 1)[1]:
            return "not another unit"
        return None if all(abs(mm_of(a) - mm_of(b)) < mark + words.mark for a, b in zip(one, other)) else "other sizes"

    def told(found):
        fault = check(found)
        if fault:
            words.wrong.append(f"{fault}: {found.group()!r}")
        return f" {found.group(1)} × {found.group(2)} "
    same, another = ("in", "mm") if words.inch else ("mm", "in")
    def size_in(unit):
        return f"({LENGTH.pattern.replace('(?:in|mm)', unit)})"
    words.text = re.sub(rf"{size_in(same)} × {size_in(same)} {size_in(another)} × {size_in(another)}", told, words.text)


def with_spare(words):
    """A sashing with its spare, brought up to the quarter inch or 5 mm."""
    for which, key in (("short", "shorts"), ("long", "longs")):
        part = words.plan["sashing"][key]
        if "length" not in part:
            continue
        whole = size({"a": part["length"]}, "a") + size({"a": part["spare"]}, "a")
        step = MM["in"] / 4 if words.inch else Fraction(5)
        words.each(rf"{which} sashing with its spare {L}",
                   lambda found: None if mm_of(found.group(1)) == math.ceil((whole - Fraction("0.001")) / step) * step
                   else f"should be {float(whole)} mm, brought up")


def thread(words):
    """All thread for all blocks, a share more for waste, and what the sashings' lines take beside."""
    blocks, told = words.project["blocks"], words.plan["thread"]
    number_of = (blocks["columns"] * blocks["rows"] + blocks.get("spare", 0)) * words.project.get("kits", 1)
    all_mm = Fraction(str(told["all"]["in"])) * MM["in"] * number_of
    least = math.ceil(all_mm / MM["yd" if words.inch else "m"] * Fraction("1.12")) - 1

    def check(found):
        if int(found.group(1)) != number_of:
            return f"{number_of} blocks"
        if not least <= int(found.group(2)) <= 2 * least + 100:
            return f"at least {least} of thread"
        bobbins = -(-number_of // told["blocksPerBobbin"])
        if not bobbins <= int(found.group(3)) <= 2 * bobbins + 10:
            return f"at least {bobbins} bobbins"
        needles = -(-number_of * Fraction(str(told["minutes"])) // 480)
        return None if int(found.group(4)) == needles else f"{needles} needles, one for 8 hours"
    words.each(r"For (\d+) blocks? about (\d+) (?:m|yd) of thread, (\d+) bobbins? wound, (\d+) needles?\.", check)


def when_done(words):
    """The sleeve and the pillow, of common practice: no published source."""
    along, across = (size(words.plan["size"]["finished"], side) for side in ("along", "across"))
    inch = MM["in"] if words.inch else Fraction(25)
    allowance = size({"a": words.plan["block"]["trimmed"]["along"]}, "a") - \
        size({"a": words.plan["block"]["outline"]["along"]}, "a") if words.project["edge"].get("kind") == "bagged" else 0

    def sleeve(found):
        wide = [Fraction("8.5") * MM["in"], 9 * MM["in"]] if words.inch else [Fraction(215), Fraction(230)]
        should = [*wide, along - 2 * inch, along - inch]
        faults = [words.length(text, mm, "sleeve") for text, mm in zip(found.groups(), should)]
        return next((fault for fault in faults if fault), None)
    words.each(rf"cut {L} to {L} wide and {L} to {L} long\.", sleeve)

    def pillow(found):
        overlap = 4 * inch
        should = [along + inch, across + inch]
        faults = [words.length(text, mm, "pillow") for text, mm in zip(found.groups()[:2], should)]
        back = mm_of(found.group(3)) - ((along + overlap) / 2 + inch + allowance / 2)
        if not 0 - words.mark <= back < Fraction("6.35") + words.mark:
            faults.append("the back's length")
        faults.append(words.length(found.group(4), across + allowance, "the back's width"))
        return next((fault for fault in faults if fault), None)
    words.each(rf"for a form of {L} × {L}, with an envelope back of two pieces {L} × {L}\.", pillow)


def taken_out(text, plan, project):
    """The text without these sentences, and what is wrong with them."""
    words = Words(text, plan, project)
    cloth_rows(words)
    layouts(words)
    thread(words)
    walk.binding(words)
    loose(words)
    with_spare(words)
    curved(words)
    both_units(words)
    when_done(words)
    for pattern, _ in PLAIN:
        words.each(pattern, lambda found: None)
    bar = "4 in" if words.inch else "100 mm"
    words.each(rf"This bar is exactly {L} long",
               lambda found: None if found.group(1) == bar else f"the bar should be {bar}")
    words.each(r"For a class: (\d+) kits", lambda found: None if int(found.group(1)) == project["kits"] else "kits")
    return words.text, words.wrong
