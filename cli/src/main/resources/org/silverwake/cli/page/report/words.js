// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Data and words of the page in the language that is chosen; numbers as it writes them.

const data = JSON.parse(document.getElementById("data").textContent);
const said = JSON.parse(document.getElementById("words").textContent);
const texts = said.languages;
const isPublic = data.audience === "public";
let language = texts[data.meta.language] ? data.meta.language : "en";

/** The text of a key, with parts in place of {0}, {1} and so on. */
function say(key, ...parts) {
    const text = texts[language].words[key];
    if (text === undefined) {
        throw new Error("no words for " + key);
    }
    return text.replace(/\{(\d)\}/g, (all, k) => (k < parts.length ? String(parts[k]) : all));
}

if (!data.guidelines.length) { // nothing to compare with: then nothing is assessed
    data.guidelines.push({
        id: "none", name: say("page.guideline.none"), printed: "", value: 1, unit: "", perSi: 1, medium: "", averaging: "any-state", factor: 1, protects: "",
        scope: "reach", isDefault: true, isOneForAllStates: false, measure: -1, linear: false, substance: "mercury", leftOut: [], doubt: null, nearBank: null
    });
}

/** A number with so many significant digits. */
function figure(value, digits) {
    if (value === 0 || !Number.isFinite(value)) {
        return value === 0 ? "0" : "";
    }
    const size = Math.abs(value);
    return new Intl.NumberFormat(language, size < 1e-4 || size >= 1e7
        ? { notation: "scientific", maximumSignificantDigits: digits } : { maximumSignificantDigits: digits }).format(value);
}

/** Two figures, or one where they look the same. */
function range(low, high, digits) {
    const a = figure(low, digits);
    const b = figure(high, digits);
    return a === b ? a : say("page.range", a, b);
}

function percent(part) {
    return new Intl.NumberFormat(language, { style: "percent", maximumFractionDigits: part > 0 && part < 0.0995 ? 1 : 0 }).format(part);
}

/** The same, rounded up: for what a difference does not exceed. */
function atMost(part) {
    const unit = part < 0.0995 ? 1e-3 : 1e-2;
    return percent(Math.ceil(part / unit - 1e-9) * unit);
}

/** A length [m] in kilometers. */
function kilometers(meters) {
    return say("page.km", new Intl.NumberFormat(language, { maximumFractionDigits: meters < 99500 ? 1 : 0 }).format(meters / 1000));
}

function day(text) {
    return new Intl.DateTimeFormat(language, { dateStyle: "long", timeZone: "UTC" }).format(new Date(text + "T00:00:00Z"));
}

/** A unit as people write it. */
function unit(text) {
    return text.replace(/\bu(g|m|S)/g, "\u00b5$1").replace("m3", "m\u00b3");
}

/** A text of the data as a sentence. */
function sentence(text) {
    return text.charAt(0).toUpperCase() + text.slice(1).replace(/\.$/, "") + ".";
}
