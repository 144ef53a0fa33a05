// SPDX-License-Identifier: MIT
.pragma library

// Where the vignettes of a sheet stand. Every length is in px.

/** So many columns for so many places, the targets' own among them; no more than `most`. */
function columns(places, most) {
    const wanted = places <= 4 ? 2 : places === 7 || places === 8 ? 4 : 3;
    return Math.max(1, Math.min(wanted, Math.floor(most)));
}

/**
 * `words` are the heights of their words. A sheet: {width, height, line, air, gap, cell, columns, least, most, upright,
 * beside, left, from (where one under the other stands), targets}. Gives {leaves, cells: [{x, y, pic, leaf}]}.
 */
function lay(words, sheet) {
    if (words.length === 0 || sheet.width <= 0 || sheet.height <= 0)
        return { leaves: 1, cells: [] };
    return sheet.upright ? stacked(words, sheet) : inRows(words, sheet);
}

/** One under the other; what finds no room goes on to the next leaf, whole. */
function stacked(words, sheet) {
    const room = sheet.height - (sheet.targets > 0 ? sheet.targets + sheet.gap : 0), air = 0.75 * sheet.gap;
    const pic = sheet.beside ? Math.round(sheet.cell * 0.19) : Math.min(sheet.cell / 2, Math.max(sheet.least, (room - sum(words)) / words.length - sheet.gap - sheet.air));
    const heights = words.map(h => sheet.beside ? Math.max(pic, h) : pic + sheet.air + h);
    const leaves = [];
    let used = room + 1;
    heights.forEach((h, i) => {
        if (used + air + h > room) {
            leaves.push([]);
            used = -air;
        }
        leaves[leaves.length - 1].push(i);
        used += air + h;
    });
    const cells = [];
    leaves.forEach((list, leaf) => {
        const slack = room - list.reduce((all, i) => all + heights[i], 0);
        const gap = Math.max(air, Math.min(2.5 * sheet.gap, slack / Math.max(1, list.length)));
        let y = 0;
        for (const i of list) {
            cells[i] = { x: sheet.from, y, pic: sheet.beside ? Math.min(pic, heights[i]) : pic, leaf };
            y += heights[i] + gap;
        }
    });
    return { leaves: leaves.length, cells };
}

function sum(list) {
    return list.reduce((all, one) => all + one, 0);
}

/**
 * In rows, the last places of the column at the hand kept for the targets; as few leaves as their pictures allow.
 * Where a row is high for one of them alone, each stands right under the one above it before any goes to another leaf.
 */
function inRows(words, sheet) {
    let found = { leaves: 1, cells: [], least: 0 };
    for (let rows = Math.ceil((words.length + 1) / sheet.columns); rows > 0; --rows)
        for (const onLeaf of rows > 1 ? [level, close] : [level]) {
            found = onLeaves(words, sheet, rows, onLeaf);
            if (found.least >= (onLeaf === close ? lowest(sheet) : sheet.least))
                return found;
        }
    return found;
}

/** Rather a low picture where one column is long than another leaf. */
function lowest(sheet) {
    return 0.75 * sheet.least;
}

/** How many rows' places at the hand the targets take. */
function kept(sheet, rows) {
    if (sheet.targets <= 0)
        return 0;
    const high = (sheet.height - (rows - 1) * sheet.gap) / rows;
    let count = 1;
    while (count < rows && count * high + (count - 1) * sheet.gap < sheet.targets)
        ++count;
    return count;
}

function onLeaves(words, sheet, rows, onLeaf) {
    const per = Math.max(1, rows * sheet.columns - kept(sheet, rows));
    const leaves = Math.ceil(words.length / per), even = Math.ceil(words.length / leaves);
    const cells = [];
    let least = Infinity;
    for (let leaf = 0; leaf < leaves; ++leaf) {
        const first = leaf * even, list = words.slice(first, first + even);
        least = Math.min(least, onLeaf(list, sheet, rows, leaf, first, cells));
    }
    return { leaves, cells, least };
}

/** The places of a leaf with so many, [row, column] each, and how many rows that takes. */
function placesFor(count, sheet, most) {
    let rows = 1;
    while (rows < most && count > rows * sheet.columns - kept(sheet, rows))
        ++rows;
    const taken = kept(sheet, rows), places = [];
    for (let row = 0; row < rows; ++row)
        for (let column = 0; column < sheet.columns; ++column)
            if (sheet.columns === 1 || row < rows - taken || column !== atHand(sheet))
                places.push([row, column]);
    return { rows, places };
}

function atHand(sheet) {
    return sheet.left ? 0 : sheet.columns - 1;
}

/** Lays one leaf's with level rows; gives how high their pictures are. */
function level(list, sheet, most, leaf, first, cells) {
    const { rows, places } = placesFor(list.length, sheet, most);
    const high = new Array(rows).fill(0);
    list.forEach((h, i) => high[places[i][0]] = Math.max(high[places[i][0]], h));
    const free = sheet.height - sum(high) - (rows - 1) * sheet.gap - rows * sheet.air;
    const pic = Math.floor(Math.min(sheet.cell / 2, sheet.most, free / rows));
    const gap = sheet.gap + Math.max(0, Math.min(sheet.gap * 2, rows > 1 ? (free - rows * pic) / rows : 0));
    const tops = high.map((h, row) => sum(high.slice(0, row)) + row * (pic + sheet.air + gap));
    list.forEach((h, i) => {
        const [row, column] = places[i];
        cells[first + i] = { x: column * (sheet.cell + sheet.line), y: tops[row], leaf,
                             // Where its words are few a picture takes what they leave.
                             pic: Math.max(sheet.least, Math.floor(Math.min(sheet.cell / 2, sheet.most, pic + high[row] - h))) };
    });
    return pic;
}

/**
 * The same with each right under the one above it, its pictures as high as its column lets them be. Those of a second
 * row stand where the first leaves most, in their order.
 */
function close(list, sheet, most, leaf, first, cells) {
    const { rows, places } = placesFor(list.length, sheet, most);
    const over = list.length - sheet.columns;
    if (rows === 2 && over > 0) {
        const taken = column => list[column] + (column === atHand(sheet) ? sheet.targets : 0);
        const free = list.slice(0, sheet.columns).map((h, column) => column).sort((a, b) => taken(a) - taken(b));
        free.slice(0, over).sort((a, b) => a - b).forEach((column, i) => places[sheet.columns + i] = [1, column]);
    }
    let least = Infinity;
    for (let column = 0; column < sheet.columns; ++column) {
        const own = list.map((h, i) => i).filter(i => places[i][1] === column);
        const under = column === atHand(sheet) && sheet.targets > 0 ? sheet.targets + sheet.gap : 0;
        const free = sheet.height - under - own.reduce((all, i) => all + list[i] + sheet.air + sheet.gap, -sheet.gap);
        const pic = Math.floor(Math.min(sheet.cell / 2, sheet.most, free / Math.max(1, own.length)));
        const gap = sheet.gap + Math.max(0, Math.min(sheet.gap * 2, (free - own.length * pic) / Math.max(1, own.length)));
        let y = 0;
        for (const i of own) {
            cells[first + i] = { x: column * (sheet.cell + sheet.line), y, leaf, pic: Math.max(lowest(sheet), pic) };
            y += pic + sheet.air + list[i] + gap;
        }
        least = own.length > 0 ? Math.min(least, pic) : least;
    }
    return least;
}
