// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The network: reaches with their lines, which reach lies nearest, what hangs together.

const network = (function () {
    const MILLION = 1e6;
    const AXIS = 6378137; // WGS 84 ellipsoid [m] (NIMA TR8350.2, table 3.1)
    const ECCENTRICITY2 = 6.69437999014e-3;
    const RADIANS = Math.PI / 180;

    const r = data.reaches;
    const count = r.id.length;
    const first = new Int32Array(count + 1);
    for (let i = 0; i < count; i++) {
        first[i + 1] = first[i] + r.size[i];
    }
    const lon = new Float64Array(first[count]);
    const lat = new Float64Array(first[count]);
    const west = new Float64Array(count).fill(Infinity);
    const east = new Float64Array(count).fill(-Infinity);
    const south = new Float64Array(count).fill(Infinity);
    const north = new Float64Array(count).fill(-Infinity);
    const degree = new Map();
    const lines = new Map();
    decode();

    function decode() {
        let x = 0;
        let y = 0;
        for (let i = 0; i < count; i++) {
            for (let k = first[i]; k < first[i + 1]; k++) {
                x += r.points[2 * k];
                y += r.points[2 * k + 1];
                lon[k] = x / MILLION;
                lat[k] = y / MILLION;
                west[i] = Math.min(west[i], lon[k]);
                east[i] = Math.max(east[i], lon[k]);
                south[i] = Math.min(south[i], lat[k]);
                north[i] = Math.max(north[i], lat[k]);
            }
            for (const node of [r.from[i], r.to[i]]) {
                degree.set(node, (degree.get(node) || 0) + 1);
            }
            if (!lines.has(r.line[i])) {
                lines.set(r.line[i], []);
            }
            lines.get(r.line[i]).push(i);
        }
        r.points = null;
        lines.forEach((reaches) => reaches.sort((a, b) => r.along[a] - r.along[b]));
    }

    const bounds = {
        west: west.reduce((a, b) => Math.min(a, b), Infinity),
        east: east.reduce((a, b) => Math.max(a, b), -Infinity),
        south: south.reduce((a, b) => Math.min(a, b), Infinity),
        north: north.reduce((a, b) => Math.max(a, b), -Infinity)
    };

    /** Length of a degree along the parallel [m]. */
    function metersEast(latitude) {
        const s = Math.sin(latitude * RADIANS);
        return RADIANS * AXIS * Math.cos(latitude * RADIANS) / Math.sqrt(1 - ECCENTRICITY2 * s * s);
    }

    /** Length of a degree along the meridian [m]. */
    function metersNorth(latitude) {
        const s = Math.sin(latitude * RADIANS);
        const w2 = 1 - ECCENTRICITY2 * s * s;
        return RADIANS * AXIS * (1 - ECCENTRICITY2) / (w2 * Math.sqrt(w2));
    }

    /** A longitude counted so that it lies nearest to the network: lines may run on beyond 180 degrees. */
    function toward(longitude) {
        const middle = (bounds.west + bounds.east) / 2;
        return longitude + 360 * Math.round((middle - longitude) / 360);
    }

    /** Distance between two near places [m], in the plane tangent between them. */
    function distance(lonA, latA, lonB, latB) {
        const middle = (latA + latB) / 2;
        return Math.hypot((toward(lonB) - toward(lonA)) * metersEast(middle), (latB - latA) * metersNorth(middle));
    }

    /** The nearest place on any reach, in the plane tangent at the point. */
    function nearest(longitude, latitude) {
        const x = toward(longitude);
        const kx = metersEast(latitude);
        const ky = metersNorth(latitude);
        let least = Infinity;
        let best = null;
        for (let i = 0; i < count; i++) {
            const dx = Math.max(west[i] - x, x - east[i], 0) * kx;
            const dy = Math.max(south[i] - latitude, latitude - north[i], 0) * ky;
            if (dx * dx + dy * dy >= least) {
                continue;
            }
            for (let k = first[i]; k + 1 < first[i + 1]; k++) {
                const ax = (lon[k] - x) * kx;
                const ay = (lat[k] - latitude) * ky;
                const bx = (lon[k + 1] - lon[k]) * kx;
                const by = (lat[k + 1] - lat[k]) * ky;
                const square = bx * bx + by * by;
                const t = square === 0 ? 0 : Math.max(0, Math.min(1, -(ax * bx + ay * by) / square));
                const px = ax + t * bx;
                const py = ay + t * by;
                if (px * px + py * py < least) {
                    least = px * px + py * py;
                    best = { reach: i, lon: x + px / kx, lat: latitude + py / ky };
                }
            }
        }
        return best && Object.assign(best, { distance: Math.sqrt(least) });
    }

    function name(i) {
        return r.name[i] < 0 ? "" : r.names[r.name[i]];
    }

    /** A reach's id, with the river's name if it has one. */
    function label(i) {
        return name(i) ? say("reach.named", { id: r.id[i], name: name(i) }) : r.id[i];
    }

    function at(k) {
        return { lon: lon[k], lat: lat[k] };
    }

    return {
        count, first, lon, lat, west, east, south, north, bounds,
        id: (i) => r.id[i],
        feature: (i) => r.features[r.feature[i]],
        name, label,
        length: (i) => r.length[i],
        order: (i) => r.order[i],
        isAgainst: (i) => r.against[i] === 1,
        start: (i) => at(first[i]),
        end: (i) => at(first[i + 1] - 1),
        middle: (i) => at(first[i] + (r.size[i] >> 1)),
        startIsFree: (i) => degree.get(r.from[i]) === 1,
        endIsFree: (i) => degree.get(r.to[i]) === 1,
        isOutlet: (function () {
            const begins = new Set(r.from);
            return (i) => !begins.has(r.to[i]);
        })(),
        /** Reaches of the same drawn line, from its first drawn point to its last. */
        lineOf: (i) => lines.get(r.line[i]),
        lines: () => lines.values(),
        ofFeature: (feature) => {
            const number = r.features.indexOf(feature);
            const found = [];
            for (let i = 0; number >= 0 && i < count; i++) {
                if (r.feature[i] === number) {
                    found.push(i);
                }
            }
            return found;
        },
        nearest, distance, toward
    };
})();
