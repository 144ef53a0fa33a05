// SPDX-License-Identifier: MIT
.pragma library

// The sizes of a stacked fraction, in px, by the cap of the number it stands beside. `least`: no numeral of a
// fraction is drawn smaller; `mm`: px to the millimetre.

/** Its own numerals are 0.53 of that cap, 0.62 where it stands alone. */
function numeral(cap, alone, least) {
    return Math.max(cap * (alone ? 0.62 : 0.53), least);
}

function bar(numeral, mm) {
    return Math.max(mm * 0.4, numeral * 0.105);
}

function air(numeral, mm) {
    return Math.max(mm * 0.6, numeral * 0.15);
}

/** How high it stands. */
function stack(cap, alone, least, mm) {
    const each = numeral(cap, alone, least);
    return 2 * each + 2 * air(each, mm) + bar(each, mm);
}
