// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Puts the page together: the map, what is on it, and what happens when something is picked or corrected.

const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
const map = L.map("map", {
    zoomSnap: 0.25, zoomDelta: 0.75, maxZoom: 20, minZoom: 2, attributionControl: false, zoomAnimation: !calm, fadeAnimation: false,
    zoomControl: false, boxZoom: true
});
L.control.zoom({ zoomInTitle: say("map.in"), zoomOutTitle: say("map.out") }).addTo(map);
L.control.scale({ imperial: false, maxWidth: 160 }).addTo(map);

const whole = L.control({ position: "topleft" });
whole.onAdd = () => {
    const bar = make("div", "leaflet-bar whole", button(say("map.whole"), showAll));
    L.DomEvent.disableClickPropagation(bar);
    return bar;
};
whole.addTo(map);

const coordinates = L.control({ position: "bottomright" });
coordinates.onAdd = () => make("div", { class: "here", "aria-hidden": "true" });
coordinates.addTo(map);
const here = coordinates.getContainer();
map.on("mousemove", (event) => { here.textContent = position(event.latlng.lng, event.latlng.lat); });
map.on("move", () => { here.textContent = position(map.getCenter().lng, map.getCenter().lat); });

const renderer = L.canvas({ padding: 0.25 });
const rivers = new Rivers({
    renderer,
    onFirst: (reaches) => {
        window.silverwake = Object.assign(window.silverwake || {}, { firstDrawing: performance.now(), firstReaches: reaches });
    }
});
const defects = new Defects({ renderer });

/** What the network and its placed points cover; points that are far away do not count. */
function extent() {
    const box = network.bounds;
    const all = L.latLngBounds([box.south, box.west], [box.north, box.east]);
    data.points.filter((p) => p.reach !== undefined).forEach((p) => all.extend([p.lat, network.toward(p.lon)]));
    return all;
}

function showAll() {
    map.fitBounds(extent(), { padding: [28, 28], animate: false });
}

/** Shows something on the card and, if asked, on the map. */
function go(what, zoom) {
    rivers.choose(!what ? [] : what.reach !== undefined ? [what.reach] : []);
    defects.choose(what && what.defect ? what.defect : null);
    points.shown.forEach((p) => p.marker && p.marker.getElement().classList.toggle("chosen", !!what && what.point === p));
    card.show(what);
    if (what && zoom) {
        zoomTo(what);
    }
}

function zoomTo(what) {
    const box = L.latLngBounds([]);
    if (what.reach !== undefined) {
        const i = what.reach;
        box.extend([network.south[i], network.west[i]]).extend([network.north[i], network.east[i]]);
    } else if (what.point) {
        const { now } = points.state(what.point);
        if (now.lon !== undefined) {
            box.extend([now.lat, network.toward(now.lon)]);
            if (what.point.hit) {
                box.extend([what.point.hit.lat, what.point.hit.lon]);
            }
        }
    } else if (what.defect.lon !== undefined) {
        box.extend([what.defect.lat, network.toward(what.defect.lon)]);
    }
    if (box.isValid()) {
        map.fitBounds(box, { padding: [60, 60], maxZoom: 15, animate: false });
        if (document.getElementById("map").getBoundingClientRect().bottom < 80) {
            document.getElementById("map").scrollIntoView({ block: "start" });
        }
    }
}

/** What lies under a click: marks before reaches. */
function pick(event) {
    const defect = defects.markAt(event.layerPoint);
    const reach = rivers.reachAt(event.layerPoint);
    if (defect) {
        go({ defect });
    } else if (reach >= 0) {
        go({ reach });
    } else {
        go(null);
    }
}
map.on("click", pick);

function save() {
    const file = new Blob(["\ufeff" + corrections.csv()], { type: "text/csv" }) /* the mark tells spreadsheets that it is UTF-8 */;
    const link = make("a", { href: URL.createObjectURL(file), download: "corrections.csv" });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    corrections.markSaved();
}

/** Brings a point that is lost to the middle of the map, so that it can be dragged on. */
function bring(point) {
    const middle = map.getCenter();
    points.move(point, middle.lng, middle.lat);
    go({ point });
}

corrections.listen(() => {
    rivers.turned.fill(0);
    corrections.entries.filter((e) => e.action === "turn" && !e.dropped && !e.applied)
        .forEach((e) => e.reaches.forEach((i) => { rivers.turned[i] = 1; }));
    points.refresh();
    labels.arrange(map);
    rivers.redraw();
    card.draw();
    lists.draw();
});

window.addEventListener("beforeunload", (event) => {
    if (!corrections.isSaved()) {
        event.preventDefault();
        event.returnValue = "";
    }
});

document.getElementById("head").append(
    make("h1", null, data.title),
    make("p", null, say("head.what", { reaches: network.count, layer: data.layer, crs: data.crs })));
document.getElementById("band").textContent = data.notForPosting;
document.getElementById("band").hidden = !data.points.some((p) => p.kind === "site");
document.title = say("head.title", { title: data.title });

showAll();
points.start(map, (point, quiet) => (quiet ? card.show({ point }) : go({ point })));
labels.arrange(map);
map.on("moveend", () => labels.arrange(map)); // before rivers are drawn, whose names keep off
rivers.addTo(map);
defects.addTo(map);
card.start(go, bring);
lists.start(go, save);
window.silverwake = Object.assign(window.silverwake || {}, { map, ready: performance.now() });
