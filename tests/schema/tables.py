# SPDX-License-Identifier: MIT
"""Project files for schemas.py: keys put into, or over, a small sound project."""
import json


def small(more):
    return {"format": "matside-project", "version": 1, "blocks": {"columns": 3, "rows": 3, "width": "6 in"},
            **json.loads("{" + more + "}")}


broken = [
    '"format": "something"', '"version": 2', '"version": 0', '"version": "1"', '"version": null',
    '"blocks": null', '"blocks": []', '"blocks": {"columns": 3, "rows": 3}',
    '"blocks": {"columns": 0, "rows": 3, "width": "6 in"}', '"blocks": {"columns": 1001, "rows": 3, "width": "6 in"}',
    '"blocks": {"columns": 3, "rows": null, "width": "6 in"}', '"blocks": {"columns": 3, "rows": 3, "width": "0 in"}',
    '"seam": "half an inch"', '"seam": true', '"seam": "-1/2 in"', '"seam": "0 in"', '"seam": 0', '"seam": -1',
    '"seam": 1e20', '"seam": ""', '"seam": "1/0 in"', '"seam": "7 1/ in"', '"seam": "7 in mm"', '"seam": "5 miles"',
    '"seam": "7 3"', '"seam": "7."', '"loft": "-1 mm"', '"loft": []',
    '"build": "inside-out"', '"hand": 7', '"system": "ells"', '"kits": 0', '"kits": 100000', '"kits": 1.5',
    '"kits": "two"', '"kitsShareStrips": 1', '"drawUp": {"along": -1}', '"drawUp": {"across": 16}',
    '"drawUp": {"along": true}', '"drawUp": {"along": "much"}', '"hoop": {"field": ["5 in"]}',
    '"hoop": {"field": ["5 in", "x"]}', '"hoop": {"field": []}', '"hoop": {"outside": ["5 in", null]}',
    '"hoop": {"kind": "square"}', '"hoop": 3', '"table": {"length": "60 in"}', '"table": {}',
    '"table": {"length": "60 in", "width": "36 in", "diameter": "3 ft"}', '"table": {"diameter": null}',
    '"cloths": [{}]', '"cloths": [{"id": ""}]', '"cloths": [{"id": null}]', '"cloths": [5]', '"cloths": {}',
    '"cloths": [{"id": "a", "role": "lining"}]', '"cloths": [{"id": "a", "price": -1}]',
    '"cloths": [{"id": "a", "price": "dear"}]', '"cloths": [{"id": "a", "usable": "0 in"}]',
    '"cloths": [{"id": "a", "soldBy": "bolt"}]', '"cloths": [{"id": "a", "directional": "yes"}]',
    '"patches": [{"cloth": ""}]', '"patches": [{"width": "2 in"}]', '"patches": [{"width": null, "cloth": "a"}]',
    '"rulers": [{}]', '"rulers": [{"length": "0 in", "width": "6 in"}]', '"rulers": "long"',
    '"strip": {"tails": "yes"}', '"strip": []', '"strip": {"harvestGaps": -1}', '"strip": {"gap": "0 in"}',
    '"thread": {"speed": 0}', '"edge": {"corner": {"kind": "cut"}}', '"edge": {"kind": "frayed"}',
    '"name": [1]', '"layout": [5]', '"layout": [["a", 5]]', '"layout": [[null]]', '"designs": [{"patches": [7]}]',
    '"designs": [{"stitches": -1}]', '"made": 7', '"made": {"testBlock": {"sent": ["6 in"]}}',
    '"made": {"testBlock": {"sent": [], "outline": []}}', '"made": {"blocks": [{"state": "eaten"}]}',
    '"made": {"blocks": [{"sides": ["x"]}]}', '"made": {"blocks": [{"sides": ["6 in", "6 in", "6 in"]}]}',
    '"made": {"blocks": [{"notes": [null]}]}', '"made": {"blocks": 1}', '"made": {"trial": "later"}',
    '"made": {"rows": [{"row": "A"}]}', '"made": {"rows": [{"length": "7 in", "joins": [null]}]}',
    '"made": {"piece": {"sides": ["1 in", "1 in", "1 in", "1 in"]}}', '"made": {"strips": [{"strip": 0}]}',
    '"made": {"pins": {"in": -1}}', '"made": {"cut": [{"count": "all"}]}', '"made": {"testJoin": {"gap": "wide"}}',
    '"made": {"testJoin": {"mend": "glue"}}', '"made": {"drawUp": {"along": 99}}',
]

sound = ['"name": "\u00c9t\u00e9"', '"unknown": {"deep": [1, null]}', '"cloths": [null]', '"made": null',
         '"made": {"blocks": [{"sides": []}, null]}', '"layout": [null, ["a", "a@90"]]', '"table": null',
         '"table": {"diameter": "1.2 m", "length": null}', '"loft": "0"', '"loft": "-0 in"', '"loft": 0',
         '"made": {"testJoin": {"gap": "\u22121/16 in"}}', '"system": "metric", "finest": "0.5 mm"',
         '"cloths": [{"id": "a", "price": 0, "later": 3}]', '"kits": null', '"drawUp": {"along": "2,5", "across": 15}']
sound += ['"seam": ' + json.dumps(way) for way in (
    "7", "7 1/2", "7-1/2", "7\u00bd", "7 \u00bd", "7.5", "7,5", '7 1/2"', "7 1/2 in", "7 1/2 IN.", "7 1/2 inches",
    "165 mm", "165mm", "16.5 cm", "1 1/4 yd", "1.2 m", " 2 ft ", "2 feet", "3/4", "3 / 4 in", ".5 in", "0 1/2 in",
    "7\u00a01/2\u00a0in", "7\u201d", "5\u2019", "1\u2044" "2 in", 0.25, 3)]

# What a schema cannot say, with the code the program gives it.
beyond = [
    ('"finest": "1/5 in"', "finest-not-a-mark"),
    ('"system": "metric", "finest": "1/16 in"', "finest-not-a-mark"),
    ('"cloths": [{"id": "a"}, {"id": "a"}]', "doubled-id"),
    ('"patches": [{"width": "2 in", "cloth": "none"}]', "cloth-not-listed"),
    ('"drawUp": {"along": "20 %"}', "draw-up-out-of-range"),
    ('"seam": "90000 m"', "length-too-long"),
    ('"seam": "0.00001 in"', "length-too-small"),
    ('"name": ' + json.dumps("\u00e9" * 1500, ensure_ascii=False), "text-too-long"),
    ('"kits": 2.0', "count-out-of-range"),
]
unsayable = {"finest-not-a-mark", "doubled-id", "cloth-not-listed", "draw-up-out-of-range"}

# Put in the place of others by chance.
values = [None, True, False, 0, 1, 7, -1, 2.5, 10**9, "", "x", "7 in", "-7 in", "0 in", "2 %", "16 %", "a" * 2500,
          [], {}, [None], ["7 in"], ["7 in", "7 in"], ["7 in"] * 4, [["a"]], [{}], {"length": "7 in"}, "left",
          "stitched", "front"]

newer = {"later", "big", "e", "a/b~c", "\u00e9", "flag"}

broken_plans = [
    (("block", "sent", "along", "in"), "7"), (("block", "sent", "along", "shows"), "7 1/8"),
    (("block", "sent", "along"), 7), (("strip", "perStrip"), -1),
    (("strip", "starts", 0), "2 in"), (("steps", 0, "station"), "attic"), (("steps", 0, "does"), "juggle"),
    (("steps", 0, "ruler", "blade"), "third"), (("cautions", 0, "offers", 0, "value"), []),
    (("steps", 0, "check"), "by-eye"), (("thread", "minutes"), -1), (("patches", 0, "count"), 1.5),
]
