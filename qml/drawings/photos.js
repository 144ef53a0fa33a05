// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "strips.js" as Strips

// How a picture of a block comes about, and what keeps it from coming, on a field of 160 by 110. `c` is a colour set
// with the piece's cloths in it, `view` the block as StripDrawing has it, or null.

const wide = 160, high = 110;

const scenes = { held: held, blank: blank, torn: torn, unplugged: unplugged, drawer: drawer, prints: prints };

function paint(context, c, scene, view, back, w, h) {
    const draws = scenes[scene];
    if (!draws)
        return;
    const k = Math.min(w / wide, h / high), x = (w - wide * k) / 2, y = (h - high * k) / 2;
    context.save();
    context.translate(x, y);
    context.scale(k, k);
    context.lineJoin = "round";
    draws(context, c, view, back, { left: -x / k, right: wide + x / k, top: -y / k, foot: high + y / k });
    context.restore();
}

function pen(context, c, width, colour) {
    context.strokeStyle = colour ?? c.ink;
    context.lineWidth = width * c.lineScale;
}

function outline(context, places) {
    context.beginPath();
    places.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
    context.closePath();
}

function filled(context, c, places, fill, width) {
    outline(context, places);
    context.fillStyle = fill;
    context.fill();
    pen(context, c, width);
    context.stroke();
}

function rounded(context, x, y, w, h, r) {
    context.beginPath();
    context.moveTo(x + r, y);
    context.arcTo(x + w, y, x + w, y + h, r);
    context.arcTo(x + w, y + h, x, y + h, r);
    context.arcTo(x, y + h, x, y, r);
    context.arcTo(x, y, x + w, y, r);
    context.closePath();
}

/** The paper corners that hold a photograph on its leaf: of x, y, w, h each corner, `size` long. */
function mounts(context, c, x, y, w, h, size, line) {
    for (const [a, b, dx, dy] of [[x, y, 1, 1], [x + w, y, -1, 1], [x + w, y + h, -1, -1], [x, y + h, 1, -1]]) {
        const out = 0.16 * size;
        outline(context, [[a - dx * out, b - dy * out], [a + dx * size, b - dy * out], [a - dx * out, b + dy * size]]);
        context.fillStyle = c.sashing;
        context.fill();
        context.strokeStyle = c.ink;
        context.lineWidth = line;
        context.stroke();
        context.beginPath();
        context.moveTo(a + dx * 0.62 * size, b + dy * 0.06 * size);
        context.lineTo(a + dx * 0.06 * size, b + dy * 0.62 * size);
        context.lineWidth = 0.6 * line;
        context.stroke();
    }
}

/** The block's face in a rectangle. */
function face(context, c, view, back, x, y, w, h, u) {
    context.save();
    context.translate(x, y);
    if ((view?.blockAlongMm ?? 0) > 0)
        Strips.block(context, c, view, w, h, back, u);
    else
        Printing.clothRect(context, c, back ? "back" : "front", 0, 0, w, h, u);
    context.restore();
}

/** The block on the table, and the tablet held over it in both hands: on its screen the block, framed by the mounts. */
function held(context, c, view, back, field) {
    const across = field.right - field.left, top = Math.max(field.top, -34), foot = Math.min(field.foot, high + 18), down = foot - top;
    Printing.clothRect(context, c, "table", field.left, top, across, down, 0.5);
    pen(context, c, 1.4);
    context.strokeRect(field.left + 0.7, top + 0.7, across - 1.4, down - 1.4);
    // The strip it was stitched on, or the cloth, runs on below the tablet.
    Printing.clothRect(context, c, back ? "back" : "front", field.left + 0.7, 22, across - 1.4, 66, 0.4);
    for (const y of [22, 88])
        Printing.strokeLine(context, field.left, y, field.right, y, c.ink, 1.4 * c.lineScale);
    for (const x of view ? [-57, 167] : [])
        Printing.roleRect(context, "planned", x, 30, 50, 50, c.ink, 1.4 * c.lineScale);
    for (const side of [1, -1])
        hand(context, c, side, foot);
    rounded(context, 22, 6, 116, 98, 7);
    context.fillStyle = c.ink;
    context.fill();
    pen(context, c, 1, c.raised);
    context.stroke();
    context.fillStyle = c.paper;
    context.fillRect(30, 13, 100, 84);
    face(context, c, view, back, 40, 15, 80, 80, 0.42);
    mounts(context, c, 43, 18, 74, 74, 13, 1.4 * c.lineScale);
    for (const side of [1, -1])
        thumb(context, c, side);
}

/** For the right side everything the other way round. */
function sided(context, side) {
    context.save();
    if (side < 0) {
        context.translate(wide, 0);
        context.scale(-1, 1);
    }
}

/** A hand that holds the tablet's edge, its fingers below it. */
function hand(context, c, side, foot) {
    sided(context, side);
    context.beginPath();
    context.moveTo(-14, foot);
    context.bezierCurveTo(-16, 96, -6, 84, -1, 70);
    context.bezierCurveTo(2, 56, 10, 46, 26, 42);
    context.lineTo(44, 46);
    context.lineTo(44, 96);
    context.bezierCurveTo(30, 106, 22, 112, 20, foot);
    context.closePath();
    context.fillStyle = c.patchB;
    context.fill();
    pen(context, c, 1.8);
    context.stroke();
    // Two fingers below each other, as far as they are seen.
    context.beginPath();
    context.moveTo(22, 53);
    context.bezierCurveTo(14, 54, 9, 58, 7, 63);
    context.stroke();
    context.restore();
}

/** Its thumb, upon the tablet. */
function thumb(context, c, side) {
    sided(context, side);
    context.beginPath();
    context.moveTo(1, 82);
    context.bezierCurveTo(6, 74, 17, 66, 25, 61);
    context.bezierCurveTo(33, 56, 39, 62, 34, 68);
    context.bezierCurveTo(28, 74, 24, 84, 20, 100);
    context.fillStyle = c.patchB;
    context.fill();
    pen(context, c, 1.8);
    context.stroke();
    // The nail, and the crease of its joint.
    context.beginPath();
    context.moveTo(28.5, 61);
    context.bezierCurveTo(33, 58.6, 36, 62.4, 32.4, 66);
    context.moveTo(19.4, 68);
    context.lineTo(22.4, 71);
    context.lineWidth = 1.1 * c.lineScale;
    context.stroke();
    context.restore();
}

/** A leaf of an album with its mounts: where a photograph belongs. */
function leaf(context, c) {
    filled(context, c, [[10, 3], [150, 3], [150, 107], [10, 107]], c.hoop, 2);
    // The holes its cord goes through.
    for (const y of [18, 55, 92]) {
        context.beginPath();
        context.arc(17, y, 2.4, 0, 2 * Math.PI);
        context.fillStyle = c.paper;
        context.fill();
    }
}

/** Nothing has come: paper without a picture, in its mounts. */
function blank(context, c) {
    leaf(context, c);
    filled(context, c, [[38, 11], [130, 11], [130, 99], [38, 99]], c.raised, 2);
    Printing.roleRect(context, "planned", 47, 20, 74, 70, c.inkSoft, 1.8 * c.lineScale);
    mounts(context, c, 38, 11, 92, 88, 17, 1.6 * c.lineScale);
    // An hour glass that has run out.
    pen(context, c, 2.6);
    filled(context, c, [[72, 38], [96, 38], [86, 55], [96, 72], [72, 72], [82, 55]], c.paper, 2.2);
    context.fillStyle = c.caution;
    outline(context, [[74, 71], [94, 71], [89, 61], [79, 61]]);
    context.fill();
    for (const y of [37, 73])
        Printing.strokeLine(context, 68, y, 100, y, c.ink, 3.4 * c.lineScale);
}

/** A photograph torn across: what is left of it in its mounts, and the corner that lies beside them. */
function torn(context, c, view, back) {
    leaf(context, c);
    context.fillStyle = c.raised;
    context.fillRect(38, 11, 92, 88);
    face(context, c, view, back, 43, 16, 82, 78, 0.42);
    pen(context, c, 2);
    context.strokeRect(38, 11, 92, 88);
    mounts(context, c, 38, 11, 92, 88, 17, 1.6 * c.lineScale);
    const rip = [[131, 44], [121, 50], [117, 60], [107, 62], [104, 72], [93, 74], [91, 85], [81, 88], [77, 100]];
    // What has gone shows the leaf, down to where its mount was.
    outline(context, [[140, 42], ...rip, [77, 104], [136, 104], [140, 104]]);
    context.fillStyle = c.hoop;
    context.fill();
    tear(context, c, rip);
    context.save();
    context.translate(126, 92);
    context.rotate(0.2);
    context.translate(-113, -84);
    filled(context, c, [...rip, [131, 100]], c.raised, 2);
    const cloth = [[124, 55], [120, 66], [110, 68], [107, 77], [97, 79], [94, 90], [88, 93], [124, 93]];
    Printing.clothShape(context, c, back ? "back" : "front", 80, 50, 50, 50, 0.42, () => {
        cloth.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
        context.closePath();
    });
    tear(context, c, rip);
    context.restore();
}

/** A torn edge of paper: white, between lines. */
function tear(context, c, rip) {
    for (const [width, colour] of [[5.4, c.ink], [2.8, c.raised]]) {
        pen(context, c, width, colour);
        context.beginPath();
        rip.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
        context.stroke();
    }
}

/** The camera's cable, out of its socket. */
function unplugged(context, c) {
    // The socket in the tablet's edge.
    rounded(context, -8, 4, 58, 102, 8);
    context.save();
    context.clip();
    context.fillStyle = c.ink;
    context.fillRect(2, 0, 60, 112);
    context.fillStyle = c.paper;
    context.fillRect(-2, 14, 38, 82);
    context.restore();
    rounded(context, 2, 4, 48, 102, 8);
    pen(context, c, 1.6);
    context.stroke();
    filled(context, c, [[42, 42], [53, 42], [53, 68], [42, 68]], c.hoop, 1.8);
    context.fillStyle = c.paper;
    context.fillRect(46, 48, 8, 14);
    // Where it would go.
    pen(context, c, 2.4, c.caution);
    context.setLineDash([1.6, 1.8]);
    context.beginPath();
    context.moveTo(58, 56);
    context.quadraticCurveTo(68, 60, 74, 80);
    context.stroke();
    Printing.solid(context);
    // The plug where it fell, its cable in a bow, and the camera on it.
    for (const [width, colour] of [[7, c.ink], [4.4, c.hoop]]) {
        pen(context, c, width, colour);
        context.lineCap = "round";
        context.beginPath();
        context.moveTo(104, 86);
        context.bezierCurveTo(154, 92, 166, 66, 142, 60);
        context.bezierCurveTo(124, 56, 121, 50, 121, 40);
        context.stroke();
    }
    context.lineCap = "butt";
    context.save();
    context.translate(0, 31);
    filled(context, c, [[78, 50], [90, 50], [90, 60], [78, 60]], c.raised, 1.8);
    for (const y of [52.4, 56.4])
        Printing.strokeLine(context, 81, y, 86, y, c.ink, 1.4 * c.lineScale);
    rounded(context, 89, 43, 22, 24, 4);
    context.fillStyle = c.hoop;
    context.fill();
    pen(context, c, 2, c.raised);
    context.stroke();
    for (const x of [95, 100, 105])
        Printing.strokeLine(context, x, 48, x, 62, c.raised, 1.4 * c.lineScale);
    context.restore();
    camera(context, c, 94, 6);
}

/** A camera from the front, 54 by 34. */
function camera(context, c, x, y) {
    filled(context, c, [[x + 16, y + 6], [x + 20, y], [x + 34, y], [x + 38, y + 6]], c.hoop, 1.8);
    rounded(context, x, y + 5, 54, 29, 4);
    context.fillStyle = c.hoop;
    context.fill();
    pen(context, c, 2);
    context.stroke();
    for (const [r, colour] of [[11.5, c.raised], [8.5, c.ink], [3.4, c.rulerBody]]) {
        context.beginPath();
        context.arc(x + 27, y + 20, r, 0, 2 * Math.PI);
        context.fillStyle = colour;
        context.fill();
        pen(context, c, 1.4);
        context.stroke();
    }
    context.fillStyle = c.raised;
    context.fillRect(x + 43, y + 9, 6, 4);
}

/** A drawer pulled out, and nothing in it. */
function drawer(context, c, view, back, field) {
    pulledOut(context, c, field, (x, y, w, h) => Printing.roleRect(context, "planned", x, y, w, h, c.inkSoft, 1.5 * c.lineScale));
}

/** A drawer with prints in it. */
function prints(context, c, view, back, field) {
    pulledOut(context, c, field, (x, y, w, h) => {
        for (const i of [4, 2, 0]) {
            filled(context, c, [[x + i, y - i], [x + i + w, y - i], [x + i + w, y - i + h], [x + i, y - i + h]], c.raised, 1.4);
            Printing.clothRect(context, c, "patchA", x + i + 3, y - i + 3, w - 6, h - 6, 0.4);
        }
    });
}

/** `lies` draws what lies in it at a place. */
function pulledOut(context, c, field, lies) {
    const left = Math.max(field.left, -30), right = Math.min(field.right, wide + 30);
    Printing.clothRect(context, c, "table", left, 0, right - left, high, 0.5);
    pen(context, c, 2);
    context.strokeRect(left + 1, 1, right - left - 2, high - 2);
    // The dark of the opening, and in it the drawer seen from above.
    filled(context, c, [[22, 12], [138, 12], [138, 40], [22, 40]], c.ink, 2);
    filled(context, c, [[30, 22], [130, 22], [150, 72], [10, 72]], c.table, 2.2);
    filled(context, c, [[37, 27], [123, 27], [138, 68], [22, 68]], c.paper, 1.8);
    // The sides' depth inside.
    filled(context, c, [[37, 27], [123, 27], [121, 36], [39, 36]], c.tableMark, 1.4);
    pen(context, c, 1.4);
    context.beginPath();
    context.moveTo(39, 36);
    context.lineTo(28, 68);
    context.moveTo(121, 36);
    context.lineTo(132, 68);
    context.stroke();
    lies(52, 42, 24, 19);
    lies(84, 42, 24, 19);
    // Its front, with the frame for a label and the pull.
    Printing.clothRect(context, c, "table", 6, 71, 148, 34, 0.5);
    pen(context, c, 2.4);
    context.strokeRect(6, 71, 148, 34);
    filled(context, c, [[52, 76], [108, 76], [108, 91], [52, 91]], c.raised, 1.8);
    context.beginPath();
    context.arc(80, 93, 9, 0, Math.PI);
    context.closePath();
    context.fillStyle = c.hoop;
    context.fill();
    pen(context, c, 1.8);
    context.stroke();
}
