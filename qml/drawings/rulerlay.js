// SPDX-License-Identifier: MIT
.pragma library

// Where everything lies in the picture of a cut: inches of cloth to pixels of a right-handed sheet.
// Along the sheet 0 is the blade, minus is under the rulers; up the sheet 0 is the fold or lower edge.

/** The numbers of a view, with what is missing made harmless. */
function tidy(view) {
    const number = (v, otherwise) => v > 0 ? v : otherwise;
    const second = (view.secondName ?? "") !== "" && view.secondWidthIn > 0;
    const mat = view.fence === "mat" || !(view.firstLengthIn > 0);
    const on = view.on ?? "cut-edge";
    const cut = number(view.cutLengthIn, 20);
    const layers = number(view.layers, 1);
    const along = view.along === true, named = on !== "outline" && (along || layers === 2 || cut >= 30);
    return {
        on, second, mat, cut, layers,
        keep: number(view.keepIn, 6),
        line: view.lineIn > 0 ? view.lineIn : 0,
        firstLength: number(view.firstLengthIn, 24), firstWidth: number(view.firstWidthIn, 6),
        secondLength: number(view.secondLengthIn, 24), secondWidth: second ? view.secondWidthIn : 0,
        clothLength: number(view.clothLengthIn, 60),
        folded: layers >= 2 && on !== "outline",
        selvages: named && !along, along, named,
        slide: view.fence === "slide"
    };
}

/** `mm` px to the millimetre, `label` px the widest word at the line in use. */
function lay(view, width, height, mm, label) {
    const v = tidy(view);
    const straight = v.on === "fold", outline = v.on === "outline";
    const butt = -v.secondWidth;
    const firstLeft = v.mat ? -v.keep : butt - v.firstWidth;
    const lineX = straight ? butt : v.mat ? -v.keep : butt - v.line;
    const edge = straight ? -Math.max(v.firstWidth + 3, 8) : -v.keep;
    const longest = v.mat ? 0 : Math.max(v.firstLength, v.second ? v.secondLength : 0);
    const over = v.mat ? 0.6 : longest > v.cut ? Math.min(1, Math.max(0.3, (longest - v.cut) / 2)) : 1;
    // A ruler much longer than the cut bleeds off the sheet; the cut decides the scale.
    const top = Math.min(Math.max(v.cut + 0.6, longest - over), v.cut * 1.25 + 2);
    const reach = Math.max(straight ? 3 : 4, v.keep * 0.5);
    const left = straight ? -Math.max(v.firstWidth + 2, 6) : Math.max(Math.min(firstLeft, edge), edge - reach);

    // On a narrow sheet the ringed line and the measure under it must do: the rulers need the room.
    const narrow = width < 90 * mm;
    // A selvage that is the topmost thing needs room for its name above it.
    const topMargin = (v.named && top < v.cut + 1.5 ? 11 : 4.4) * mm, footMargin = (straight || outline ? 7 : 15) * mm, rightMargin = outline ? Math.max(30 * mm, label + 12 * mm) : (narrow ? 26 : 30) * mm;
    const scale = leftMargin => Math.min((height - topMargin - footMargin) / (top + over),
                                         (width - leftMargin - rightMargin) / -left);
    let leftMargin = straight ? 0 : 2.4 * mm;
    let k = scale(leftMargin);
    const firstTop = () => (v.mat ? v.cut : v.firstLength - over);
    const above = () => (top - firstTop()) * k + topMargin;
    const besides = () => (lineX - Math.max(left, firstLeft)) * k;
    let where = straight || (narrow && !outline && !v.mat) ? "none" : outline ? "waste" : "above";
    if (where === "above" && (above() < 25 * mm || v.mat || leftMargin + besides() < label)) {
        where = !v.mat && besides() > label + 3 * mm ? "glass" : "beside";
        if (where === "beside") {
            leftMargin = label + 5 * mm;
            k = scale(leftMargin);
        }
    }
    const slackX = Math.max(0, width - leftMargin - rightMargin + left * k);
    const slackY = Math.max(0, height - topMargin - footMargin - (top + over) * k);
    const blade = leftMargin - left * k + slackX * 0.4;
    const bleeds = longest - over > top;
    const foot = height - footMargin - over * k - slackY * (bleeds ? 0.3 : 0.5);
    const x = inches => blade + inches * k;
    const y = inches => foot - inches * k;
    return {
        v, k, where, blade, foot,
        width, height,
        edge: straight ? 0 : x(edge),
        line: x(lineX), butt: x(butt), firstLeft: x(firstLeft),
        cutTop: y(v.cut), base: y(-over),
        firstTop: y(firstTop()), secondTop: y(v.secondLength - over),
        ragged: x(0.7),
        clothEnd: straight ? x(0.7) : outline ? x(Math.max(0.6, v.line)) : x(edge + v.clothLength),
        outlineLeft: x(-(v.keep - v.line)), outlineTop: y(v.cut - v.line), outlineFoot: y(v.line),
        head: Math.max(mm * 2.6, Math.min(y(v.cut), y(longest - over)) - 4 * mm),
        /** A measure shorter than its figure by this much carries the figure beside it. */
        measureSlack: 2.4 * mm,
        measureY: y(-over) + 7.4 * mm
    };
}

/** What is laid while nothing is shown. A binding that is asked before the one it leans on finds no null. */
function nothing() {
    return {
        v: { on: "", mat: false, second: false, named: false, folded: false, along: false },
        k: 1, where: "none", blade: 0, foot: 0, width: 0, height: 0, edge: 0, line: 0, butt: 0, firstLeft: 0,
        cutTop: 0, base: 0, firstTop: 0, secondTop: 0, ragged: 0, clothEnd: 0, outlineLeft: 0, outlineTop: 0,
        outlineFoot: 0, head: 0, measureSlack: 0, measureY: 0
    };
}
