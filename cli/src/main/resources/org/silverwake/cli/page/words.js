// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Data and words of the page, numbers as people read them, elements that hold text and never markup.

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

/** A longitude brought to -180 to 180 [degrees]. */
function wrapped(longitude) {
    return longitude >= -180 && longitude <= 180 ? longitude : ((((longitude + 180) % 360) + 360) % 360) - 180;
}

/** A position in words. */
function position(longitude, latitude) {
    const east = wrapped(longitude);
    return Math.abs(east).toFixed(5) + " " + say(east < 0 ? "west" : "east") + ", "
        + Math.abs(latitude).toFixed(5) + " " + say(latitude < 0 ? "south" : "north");
}

/** A word without case and accents, for searching. */
function plain(text) {
    return text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase();
}

/** An element with a class, attributes and children; strings become text. */
function make(tag, look, ...children) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(typeof look === "string" ? { class: look } : look || {})) {
        if (typeof value === "function") {
            element.addEventListener(name, value);
        } else if (value !== false && value !== undefined) {
            element.setAttribute(name, value === true ? "" : value);
        }
    }
    element.append(...children.filter((child) => child !== null && child !== undefined));
    return element;
}

/** A button that says what it does. */
function button(text, act, look) {
    return make("button", Object.assign({ type: "button", click: act }, look), text);
}
