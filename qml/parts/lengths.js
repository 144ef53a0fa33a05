// SPDX-License-Identifier: MIT
.pragma library

// How a written length is split for setting in type. Nothing is reckoned here.

/** "a scant 7 1/4 in" as the fields a figure is drawn from; words that hold no number stay one whole. */
function parse(text) {
    const t = String(text).trim();
    const m = t.match(/^([^\d\u2212-]*?)\s*([\u2212-]?)\s*(?:(\d+)\s*\/\s*(\d+)|(\d[\d.,]*)(?:\s+(\d+)\s*\/\s*(\d+))?)\s*(\D*)$/);
    if (!m)
        return { lean: "", minus: false, whole: t, num: "", den: "", unit: "", text: t };
    return {
        lean: m[1].trim(),
        minus: m[2] !== "",
        whole: m[5] || "",
        num: m[3] || m[6] || "",
        den: m[4] || m[7] || "",
        unit: m[8].trim(),
        text: t
    };
}

/**
 * Words and {lengths} as tokens that may part at a space: before, figure, after. Not at a space that holds
 * together, as French sets before a colon.
 */
function tokens(text) {
    const out = [];
    const pieces = String(text).match(/[^ \t\n{}]*\{[^}]*\}[^ \t\n{}]*|[^ \t\n{}]+/g) || [];
    for (const p of pieces) {
        const m = p.match(/^([^{]*)\{([^}]*)\}(.*)$/);
        out.push(m ? { before: m[1], figure: parse(m[2]), after: m[3] } : { before: p, figure: null, after: "" });
    }
    return out;
}

/** The same sentence as it is read out. */
function spoken(text) {
    return String(text).replace(/[{}]/g, "");
}

/** A list of strings and figures as the same tokens. */
function tokensOf(parts) {
    let out = [];
    for (const p of parts) {
        if (typeof p === "string")
            out = out.concat(tokens(p));
        else
            out.push({ before: "", figure: p, after: "" });
    }
    return out;
}
