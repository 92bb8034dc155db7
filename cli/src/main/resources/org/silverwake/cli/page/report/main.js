// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Puts the report together: the map and what follows a choice.

const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
frameMap();
const map = L.map("map", {
    zoomSnap: 0.25, zoomDelta: 0.75, maxZoom: 18, minZoom: 2, attributionControl: false, zoomAnimation: !calm, fadeAnimation: false,
    zoomControl: false, inertia: !calm
});
const zoomControl = L.control.zoom().addTo(map);
L.control.scale({ imperial: false, maxWidth: 130 }).addTo(map);
const whole = L.control({ position: "topright" });
whole.onAdd = () => {
    const bar = make("div", "leaflet-bar whole", make("button", { type: "button", click: showAll, id: "whole" }));
    L.DomEvent.disableClickPropagation(bar);
    return bar;
};
whole.addTo(map);

const reaches = new Reaches({
    renderer: L.canvas({ padding: 0.2 }),
    onFirst: (count) => {
        window.silverwake = Object.assign(window.silverwake || {}, { firstDrawing: performance.now(), firstReaches: count });
    }
});

/** The map's frame is as wide or tall as the river, so that little of it is empty. */
function frameMap() {
    const { west, east, south, north } = network.bounds;
    const middle = (south + north) / 2;
    const wide = network.distance(west, middle, east, middle);
    const tall = network.distance(west, south, west, north);
    const aspect = wide > 0 && tall > 0 ? Math.max(1.1, Math.min(2.1, 0.9 * wide / tall)) : 1.2;
    document.getElementById("map").style.setProperty("--aspect", aspect.toFixed(3));
}

function showAll() {
    const box = network.bounds;
    const all = L.latLngBounds([box.south, box.west], [box.north, box.east]);
    data.places.filter((p) => Number.isFinite(p.lon)).forEach((p) => all.extend([p.lat, network.toward(p.lon)]));
    areas.shown.forEach((area) => all.extend(area.ring));
    const edge = map.getSize().x < 500 ? 14 : 24;
    map.fitBounds(all, { padding: [edge, edge], animate: false });
}

/** Names of points first, then of areas; names of rivers keep off both. */
function arrangeNames() {
    labels.arrange(map);
    areas.arrange(map);
}

function zoomTo(i) {
    map.fitBounds([[network.south[i], network.west[i]], [network.north[i], network.east[i]]], { padding: [70, 70], maxZoom: 14, animate: false });
}

/** Where along a reach a position lies, 0 at its upper end to 1. */
function partAlong(i, latlng) {
    let best = Infinity;
    let at = 0;
    let length = 0;
    for (let k = network.first[i]; k < network.first[i + 1]; k++) {
        const gap = network.distance(network.lon[k], network.lat[k], latlng.lng, latlng.lat);
        length += k > network.first[i] ? network.distance(network.lon[k - 1], network.lat[k - 1], network.lon[k], network.lat[k]) : 0;
        if (gap < best) {
            best = gap;
            at = length;
        }
    }
    return length ? at / length : 0;
}

map.on("click", (event) => {
    const reach = reaches.reachAt(event.layerPoint);
    const group = areas.at(event.latlng);
    choice.change("picked", { picked: reach >= 0 ? { reach } : group >= 0 ? { group } : null });
});

map.on("mousemove", (event) => {
    const reach = reaches.reachAt(event.layerPoint);
    profile.point(reach, reach >= 0 ? partAlong(reach, event.latlng) : 0);
});

function nameControls() {
    const [closer, farther] = zoomControl.getContainer().querySelectorAll("a");
    [[closer, "page.closer"], [farther, "page.farther"]].forEach(([link, key]) => {
        link.title = say(key);
        link.setAttribute("aria-label", say(key));
    });
    document.getElementById("whole").textContent = say("page.whole");
    points.name();
    areas.name();
}

choice.listen((what) => {
    const picked = choice.it.picked;
    const all = what === "all";
    if (what === "view" || all) {
        frame.draw();
        nameControls();
        whatif.build();
    }
    if (what === "picked" || all) {
        points.choose(picked);
        areas.choose(picked);
        reaches.chosen = isOnRiver(picked) ? [drawnReach(picked)] : [];
    }
    if (what !== "picked") {
        legend.draw();
        whatif.draw(what);
        balance.draw();
    }
    reaches.redraw();
    card.draw();
    profile.draw();
    if (what !== "picked") {
        later(tables.draw);
    }
});

/** Tables follow when the hand rests, so that sliders stay quick. */
let waiting = 0;
function later(act) {
    clearTimeout(waiting);
    waiting = setTimeout(act, 120);
}

// paper gets the whole river at the width of a page
window.addEventListener("beforeprint", () => {
    document.body.classList.add("printing");
    map.invalidateSize({ animate: false, pan: false });
    showAll();
    reaches.options.renderer._update();
    reaches.options.renderer._redraw();
    arrangeNames();
    profile.draw();
    balance.draw();
    tables.draw();
});
window.addEventListener("afterprint", () => {
    document.body.classList.remove("printing");
    map.invalidateSize({ animate: false });
    showAll();
    profile.draw();
    balance.draw();
});
let width = window.innerWidth;
window.addEventListener("resize", () => {
    if (window.innerWidth !== width && !document.body.classList.contains("printing")) {
        width = window.innerWidth;
        profile.draw();
        balance.draw();
    }
});

tables.start();
showAll();
areas.start(map, reaches.options.renderer, (group, settled) => choice.change("picked", { picked: { group } }, settled));
points.start(map, (picked) => choice.change("picked", { picked }));
map.on("moveend", arrangeNames); // before reaches are drawn, whose names keep off
card.start(zoomTo);
profile.start((reach, part) => reaches.point(reach, part));
choice.read();
clearTimeout(waiting);
tables.draw();
arrangeNames();
reaches.addTo(map);

/**
 * For tests and for readers who want the numbers in full: low, high and answer of every reach by a value, in a flow state (-1: as
 * the value asks), with levers moved so far toward their other ends, and those of them that close altogether. Values are SI, NaN where there is no answer.
 */
function read(guideline, state, ways, closed) {
    const shown = answering.answers(guideline, state, model.moved(Float64Array.from(ways || choice.it.ways), ways ? closed : choice.it.closed));
    const value = (list) => Array.from(list, (v, i) => (shown.answer[i] < answering.NOT_ASSESSED ? v : null));
    return { low: value(shown.low), high: value(shown.high), answer: Array.from(shown.answer), shade: Array.from(shown.shade, (k) => data.shades[k].key) };
}

window.silverwake = Object.assign(window.silverwake || {}, { map, read, choice, ready: performance.now() });
