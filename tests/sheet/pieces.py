# SPDX-License-Identifier: MIT
"""Pieces to print: a scenario in millimetres, and pieces by chance that a maker might plan."""
import copy

from lengths import mm_of


def metric(project):
    """The same project in even millimetres, a cloth sold by 10 cm."""
    def walk(part):
        if isinstance(part, dict):
            return {key: "10 cm" if key == "soldBy" else walk(one) for key, one in part.items()
                    if key not in ("finest", "colour")}
        if isinstance(part, list):
            return [walk(one) for one in part]
        if isinstance(part, str) and part.endswith(" in"):
            return f"{max(1, 2 * round(mm_of(part) / 2))} mm"
        return part
    return {**walk(project), "system": "metric"}


def by_chance(chance, demo):
    """Another size, other seams, joins, edges and hoops; many of them cannot be made."""
    project = copy.deepcopy(demo)

    def length(least, most, part=8):
        whole, rest = divmod(chance.randint(round(least * part), round(most * part)), part)
        return f"{whole} {rest}/{part} in" if rest and whole else f"{rest}/{part} in" if rest else f"{whole} in"
    project["blocks"] = {"columns": chance.randint(1, 9), "rows": chance.randint(1, 6),
                         "width": length(4, 8), "height": length(4, 8), "spare": chance.randint(0, 3)}
    project["seam"] = chance.choice(["1/4 in", "3/8 in", "1/2 in"])
    project["sashing"] = {"finished": chance.choice(["1/2 in", "3/4 in", "1 in", "1 1/4 in"])}
    project["drawUp"] = {"along": chance.choice(["0 %", "2 %", "3.5 %"]), "across": chance.choice(["1 %", "2.5 %"])}
    project["build"] = chance.choice(["reversible", "reversible", "clean-back"])
    project["edge"] = {"outside": length(0.25, 1), "binding": chance.choice(["single", "double"]),
                       "sewn": chance.choice(["hand", "machine"]), "kind": chance.choice(["bound", "bound", "bagged"])}
    if chance.random() < 0.3:
        project["edge"]["corner"] = {"kind": "rounded", "radius": length(1, 4)}
    if chance.random() < 0.4:
        project["strip"]["tails"] = True
    if chance.random() < 0.3:
        project["strip"]["harvest"] = True
    if chance.random() < 0.3:
        project["kits"] = chance.randint(2, 5)
    if chance.random() < 0.4:
        del project["table"]
    if chance.random() < 0.5:
        project["patches"] = []
    strips = chance.choice(["39 in", "40 1/2 in", "42 in", "56 in"])
    project["strip"]["usable"] = strips
    for cloth in project["cloths"]:
        layered = cloth["role"] in ("front", "back", "batting")
        cloth["usable"] = strips if layered else chance.choice(["39 in", "40 1/2 in", "42 in", "56 in"])
        cloth["price"] = round(chance.uniform(2, 20), 2)
        if chance.random() < 0.4:
            cloth.pop("price")
        if chance.random() < 0.15:
            cloth["owned"] = [{"length": length(10, 30), "width": length(20, 40)}]
    return metric(project) if chance.random() < 0.5 else project
