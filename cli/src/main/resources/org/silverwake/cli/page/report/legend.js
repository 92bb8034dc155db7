// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The legend, and how much river and how many people have which answer: words first, then numbers.

const legend = (function () {
    const OFFSET = 6;

    /** A piece of line in the look of a class. */
    function swatch(look) {
        const line = (width, dash) => picture("line", {
            x1: OFFSET, x2: 58, y1: 9, y2: 9, stroke: look.color, "stroke-width": width, "stroke-dasharray": dash,
            "stroke-linecap": look.dash.length && look.dash[0] < 0.5 * look.width ? "round" : "butt"
        });
        const solid = look.dash.length && look.dash[0] >= 0.5 * look.width;
        return picture("svg", { class: "swatch", viewBox: "0 0 64 18", "aria-hidden": "true" },
            solid ? line(look.width * 0.3, "none") : null, line(look.width, look.dash.length ? look.dash.join(" ") : "none"));
    }

    function swatchOf(shade) {
        return swatch(data.shades[shade]);
    }

    /** The words of a class, for the value that is compared with. */
    function words(shade) {
        const f = choice.guideline().factor;
        const far = f * data.rule.farAbove;
        const key = data.shades[shade].key;
        const parts = key === "far-above" ? [figure(far, 3)] : key === "above" ? [figure(f, 3), figure(far, 3)] : [figure(f, 3)];
        return say("shade." + key, ...parts);
    }

    /** Length of river by class [m]. */
    function lengths(shown) {
        const sums = data.shades.map(() => 0);
        shown.shade.forEach((shade, i) => { sums[shade] += network.length(i); });
        return sums;
    }

    function draw() {
        tried();
        const shown = choice.shown();
        const sums = lengths(shown);
        const old = lengths(choice.shownBefore());
        const rows = data.shades.map((look, k) => k).filter((k) => k < 5 || sums[k] > 0 || old[k] > 0).map((k) =>
            make("li", null, swatchOf(k), make("span", null, words(k)), make("b", "amount", kilometers(sums[k]))));
        const extra = [["hatched", "hatch"], ["nearBank", "dots"], ["fromBackground", "diamonds"]]
            .filter(([mark]) => shown[mark].some((m) => m)).map(([mark, look]) =>
                make("li", null, extraSwatch(look), make("span", null, say("page.legend." + mark))));
        const marks = [...new Set(points.shown.filter((p) => p.marker).map((p) => p.given.mark))].map((mark) =>
            make("li", null, make("span", "swatch", symbolOf(mark)), make("span", null, say("page.mark." + (mark in SHAPES ? mark : "place")))));
        document.getElementById("legend").replaceChildren(
            make("h3", null, say("page.legend")), make("p", "hint", comparedWith()),
            make("ul", "legend", ...rows, ...extra, ...marks, areas.shown.length ? make("li", null, extraSwatch("area"), make("span", null, say("sheet.area"))) : null,
                make("li", null, extraSwatch("arrow"), make("span", null, say("page.legend.flow")))));
    }

    /** That sliders were moved, in words beside the map, so that no trial is taken for the present. */
    function tried() {
        const moved = data.levers.map((lever, l) => [lever, choice.it.ways[l], choice.it.closed[l]]).filter(([, way]) => way > 0)
            .map(([lever, way, closed]) => lever.label + " " + (closed ? say("page.whatif.isClosed")
                : say("page.whatif." + lever.kind + ".at", percent(lever.kind === "practice" ? way : 1 - way))));
        const told = document.getElementById("tried");
        told.hidden = !moved.length;
        told.textContent = moved.length ? say("page.tried", moved.join("; ")) : "";
    }

    function extraSwatch(look) {
        const shapes = {
            hatch: [["path", { d: "M6 9H58", class: "s-river" }], ["path", { d: "M12 13 16 5M22 13 26 5M32 13 36 5M42 13 46 5M52 13 56 5", class: "s-ink" }]],
            dots: [["path", { d: "M6 7H58", class: "s-river" }], ["path", { d: "M6 14H58", class: "s-dots" }]],
            diamonds: [["path", { d: "M6 9H58", class: "s-river" }], ["path", { d: "M20 4 25 9 20 14 15 9ZM44 4 49 9 44 14 39 9Z", class: "s-paper" }]],
            area: [["rect", { x: 8, y: 2, width: 48, height: 14, rx: 4, class: "s-area" }]],
            arrow: [["path", { d: "M6 9H58", class: "s-river" }], ["path", { d: "M40 9 26 15 30 9 26 3Z", class: "s-fill" }]]
        };
        return picture("svg", { class: "swatch", viewBox: "0 0 64 18", "aria-hidden": "true" }, ...shapes[look].map(([tag, attributes]) => picture(tag, attributes)));
    }

    return { draw, swatchOf, words, lengths };
})();

/** Namespace of drawings, asked of the browser. */
const SVG = new DOMParser().parseFromString("<svg viewBox='0 0 1 1'></svg>", "text/html").body.firstChild.namespaceURI;

/** An element of a drawing. */
function picture(tag, attributes, ...children) {
    const element = document.createElementNS(SVG, tag);
    Object.entries(attributes || {}).forEach(([name, value]) => element.setAttribute(name, value));
    element.append(...children.filter((child) => child !== null && child !== undefined));
    return element;
}

/** The value, what it is for, and the state of the river that is shown. */
function comparedWith() {
    const g = choice.guideline();
    return [g.printed ? say("page.legend.compared", g.name, guidelineWords(g)) : g.name, choice.it.state < 0 || g.isOneForAllStates ? say("page.state.all") : stateWords(choice.it.state)].map(sentence).join(" ");
}

/** What a value protects and where it is met, in words. */
function guidelineWords(g) {
    const medium = { "surface water": "surface-water", "drinking water": "drinking-water", "bed sediment": "bed-sediment", fish: "fish" }[g.medium];
    return [medium ? say("medium." + medium) : g.medium, unit(g.printed), g.protects].filter((t) => t).join(", ");
}

/** Sums over river and places by answer, before and now. */
const totals = (function () {
    function ofRiver(shown) {
        const sums = [0, 0, 0, 0, 0];
        shown.answer.forEach((answer, i) => { sums[answer] += network.length(i); });
        return sums;
    }

    /** The answer at a place: that of its reach, if the value applies there. */
    function atPlace(place, shown) {
        const g = data.guidelines[shown.guideline];
        return place.reach < 0 || place.reach === null || (g.scope === "drinking-place" && !place.drinking) ? answering.NONE : shown.answer[place.reach];
    }

    return { ofRiver, atPlace };
})();
