// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Areas of groups of sites under the rivers, as on sheets: a pale ground, a dotted edge, the group's name, which is a button by keyboard.

const areas = (function () {
    const INK = "#1c1c1c";
    const GROUND = "#ecdfc6";
    const CHOSEN = "#b4500f";
    const FONT = "italic bold 14px ";
    const TALL = 24;
    const all = data.groups.map((group, g) => ({ g, ring: ring(group.points), contributor: data.contributors[group.contributor] }));

    /** Latitudes and longitudes of a ring that is written like lines of reaches. */
    function ring(points) {
        const at = [];
        let x = 0;
        let y = 0;
        for (let k = 0; k < points.length; k += 2) {
            x += points[k];
            y += points[k + 1];
            at.push([y * data.reaches.degree, x * data.reaches.degree]);
        }
        const turn = network.toward(at[0][1]) - at[0][1];
        return at.map(([lat, lon]) => [lat, lon + turn]);
    }

    function start(map, renderer, pick) {
        const canvas = document.createElement("canvas").getContext("2d");
        for (const area of all) {
            area.shape = L.polygon(area.ring, {
                renderer, interactive: false, color: INK, weight: 1.6, dashArray: "1.6 4", lineCap: "butt", fillColor: GROUND, fillOpacity: 0.8
            }).addTo(map);
            canvas.font = FONT + getComputedStyle(document.body).fontFamily;
            area.width = Math.ceil(canvas.measureText(area.contributor.name).width) + 10;
            const icon = L.divIcon({ className: "area-name", iconSize: [area.width, TALL], html: make("span", null, area.contributor.name) });
            area.marker = L.marker(area.shape.getBounds().getCenter(), { icon }).addTo(map);
            area.marker.on("click", () => pick(area.g, true));
            area.marker.on("keypress", (event) => event.originalEvent.key === "Enter" && pick(area.g, true));
            area.marker.getElement().addEventListener("focus", () => pick(area.g, false));
        }
        name();
    }

    function name() {
        all.forEach((area) => area.marker.getElement().setAttribute("aria-label", [area.contributor.name, say("page.card.group.count", area.contributor.sites)].join(": ")));
    }

    /** Names stand where nothing else does: within their areas at the upper edge, the lower, in the middle; else above or below. */
    function arrange(map) {
        for (const area of all) {
            const box = area.shape.getBounds();
            const middle = box.getCenter();
            const upper = [box.getNorth(), middle.lng];
            const lower = [box.getSouth(), middle.lng];
            const spots = [[upper, 3], [lower, -TALL - 3], [middle, -TALL / 2], [upper, -TALL - 3], [lower, 3]].map(([at, down]) => {
                const pixel = map.latLngToLayerPoint(at);
                return { at, down, box: labels.box(pixel.x - area.width / 2, pixel.y + down, area.width, TALL, area) };
            });
            const spot = spots.find((s) => labels.isFree(s.box, labels.boxes));
            const shown = spot || spots[3];
            area.marker.setLatLng(shown.at);
            area.marker.getElement().style.marginTop = shown.down + "px";
            area.marker.getElement().classList.toggle("crowded", !spot);
            if (spot) {
                labels.boxes.push(spot.box);
            }
        }
    }

    /** The area at a place on the map; -1 where there is none. The smaller one where two lie over each other. */
    function at(latlng) {
        const found = all.filter((area) => isWithin(area.ring, latlng)).sort((a, b) => extent(a.ring) - extent(b.ring));
        return found.length ? found[0].g : -1;
    }

    function isWithin(corners, { lat, lng }) {
        let within = false;
        for (let k = 1; k < corners.length; k++) {
            const [a, b] = [corners[k - 1], corners[k]];
            if ((a[0] > lat) !== (b[0] > lat) && lng < a[1] + (lat - a[0]) / (b[0] - a[0]) * (b[1] - a[1])) {
                within = !within;
            }
        }
        return within;
    }

    function extent(corners) {
        return Math.abs(corners.slice(1).reduce((sum, b, k) => sum + corners[k][1] * b[0] - b[1] * corners[k][0], 0));
    }

    function choose(picked) {
        all.forEach((area) => {
            const isChosen = !!picked && picked.group === area.g;
            area.shape.setStyle(isChosen ? { color: CHOSEN, weight: 3, dashArray: null } : { color: INK, weight: 1.6, dashArray: "1.6 4" });
            area.marker.getElement().classList.toggle("chosen", isChosen);
        });
    }

    return { shown: all, start, name, arrange, at, choose };
})();
