// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Places and sites on the map: a mark and a name each, reached by keyboard like a button.

const points = (function () {
    const all = [
        ...data.places.map((place, p) => ({ given: place, kind: "place", place: p })),
        ...data.contributors.filter((c) => c.lon !== undefined)
            .filter((c, k, list) => list.findIndex((d) => d.name === c.name) === k)
            .map((c) => ({ given: { name: c.name, mark: "site", kind: "site", lon: c.lon, lat: c.lat }, kind: "site", reach: c.reach }))
    ];

    function icon(point) {
        return L.divIcon({
            className: "point", iconSize: [24, 24],
            html: make("span", null, symbolOf(point.given.mark), make("span", "name", point.given.name))
        });
    }

    function label(point) {
        return say("page.mark." + (point.given.mark in SHAPES ? point.given.mark : "place")) + ": " + point.given.name;
    }

    function start(map, pick) {
        for (const point of all.filter((p) => Number.isFinite(p.given.lon))) {
            point.marker = L.marker([point.given.lat, network.toward(point.given.lon)], { icon: icon(point), riseOnHover: true, alt: label(point) });
            const act = () => pick(point.kind === "place" ? { place: point.place } : { reach: point.reach });
            point.marker.on("click", act);
            point.marker.on("keypress", (event) => event.originalEvent.key === "Enter" && act());
            point.marker.addTo(map);
        }
        name();
    }

    function name() {
        all.filter((p) => p.marker).forEach((p) => p.marker.getElement().setAttribute("aria-label", label(p)));
    }

    function choose(picked) {
        all.filter((p) => p.marker).forEach((p) => p.marker.getElement().classList.toggle("chosen",
            !!picked && picked.place !== undefined && p.place === picked.place));
    }

    return { shown: all, start, name, choose, isFar: () => false };
})();
