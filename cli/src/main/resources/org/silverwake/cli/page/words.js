// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Data and words of the page, numbers as people read them.

const data = JSON.parse(document.getElementById("data").textContent);
const words = JSON.parse(document.getElementById("words").textContent);

/** The words of a key, with values in place of {names}. */
function say(key, values) {
    const text = words[key];
    if (text === undefined) {
        throw new Error("no words for " + key);
    }
    return values ? text.replace(/\{(\w+)\}/g, (all, name) => (name in values ? String(values[name]) : all)) : text;
}

/** A length [m] in words. */
function meters(length) {
    if (length < 10) {
        return length.toFixed(1) + " m";
    }
    return length < 1000 ? length.toFixed(0) + " m" : (length / 1000).toFixed(length < 10000 ? 2 : 1) + " km";
}

/** A position in words. */
function position(longitude, latitude) {
    const east = wrapped(longitude);
    return Math.abs(east).toFixed(5) + " " + say(east < 0 ? "west" : "east") + ", "
        + Math.abs(latitude).toFixed(5) + " " + say(latitude < 0 ? "south" : "north");
}
