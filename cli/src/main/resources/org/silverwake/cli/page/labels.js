// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Names of points on the map: shown where there is room, on the right of the mark or on its left.

const labels = {
    /** What names and marks of points cover, in pixels of the layer, so that names of rivers keep off. */
    boxes: [],

    /** Sites and points without a place come first. */
    rank: (point) => (points.isFar(point) ? 0 : point.given.kind === "site" ? 1 : 2),

    arrange: function (map) {
        const view = L.bounds(map.containerPointToLayerPoint([0, 0]), map.containerPointToLayerPoint(map.getSize()));
        const marked = points.shown.filter((point) => point.marker)
            .map((point) => ({ point, at: map.latLngToLayerPoint(point.marker.getLatLng()) }))
            .filter((m) => view.contains(m.at));
        const boxes = [...labels.controls(map), ...marked.map((m) => labels.box(m.at.x - 11, m.at.y - 11, 22, 22, m.point))];
        marked.sort((a, b) => labels.rank(a.point) - labels.rank(b.point));
        for (const m of marked) {
            const name = m.point.marker.getElement().querySelector(".name");
            m.point.width = m.point.width || name.offsetWidth;
            const spots = [[m.at.x + 14, "right"], [m.at.x - 14 - m.point.width, "left"]];
            const spot = spots.map(([x, side]) => ({ side, box: labels.box(x, m.at.y - 9, m.point.width, 18, m.point) }))
                .find((s) => s.box.x >= view.min.x && s.box.x + s.box.w <= view.max.x && labels.isFree(s.box, boxes));
            name.className = "name " + (spot ? spot.side : "hidden");
            if (spot) {
                boxes.push(spot.box);
            }
        }
        labels.boxes = boxes;
    },

    /** What the map's own buttons and scale cover. */
    controls: function (map) {
        const frame = map.getContainer().getBoundingClientRect();
        return [...map.getContainer().querySelectorAll(".leaflet-control")].map((control) => {
            const box = control.getBoundingClientRect();
            const at = map.containerPointToLayerPoint([box.left - frame.left, box.top - frame.top]);
            return labels.box(at.x, at.y, box.width, box.height);
        });
    },

    box: (x, y, w, h, point) => ({ x, y, w, h, point }),

    isFree: (a, boxes) => boxes.every((b) => (b.point && b.point === a.point)
        || a.x > b.x + b.w || b.x > a.x + a.w || a.y > b.y + b.h || b.y > a.y + a.h)
};
