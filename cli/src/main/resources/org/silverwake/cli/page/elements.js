// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Elements that hold text and never markup, and small things that every page needs.

/** A longitude brought to -180 to 180 [degrees]. */
function wrapped(longitude) {
    return longitude >= -180 && longitude <= 180 ? longitude : ((((longitude + 180) % 360) + 360) % 360) - 180;
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
