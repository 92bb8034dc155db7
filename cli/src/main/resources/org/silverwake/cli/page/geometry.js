// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Lines of reaches in flat arrays, what they cover, which one lies nearest to a place.

/**
 * Geometry of reaches from points that follow one another, longitude and latitude by turns as whole parts of a degree, each
 * as the difference to the one before.
 */
function geometry(points, size, unit) {
    const AXIS = 6378137; // WGS 84 ellipsoid [m] (NIMA TR8350.2, table 3.1)
    const ECCENTRICITY2 = 6.69437999014e-3;
    const RADIANS = Math.PI / 180;

    const count = size.length;
    const first = new Int32Array(count + 1);
    for (let i = 0; i < count; i++) {
        first[i + 1] = first[i] + size[i];
    }
    const lon = new Float64Array(first[count]);
    const lat = new Float64Array(first[count]);
    const west = new Float64Array(count).fill(Infinity);
    const east = new Float64Array(count).fill(-Infinity);
    const south = new Float64Array(count).fill(Infinity);
    const north = new Float64Array(count).fill(-Infinity);
    decode();

    function decode() {
        let x = 0;
        let y = 0;
        for (let i = 0; i < count; i++) {
            for (let k = first[i]; k < first[i + 1]; k++) {
                x += points[2 * k];
                y += points[2 * k + 1];
                lon[k] = x / unit;
                lat[k] = y / unit;
                west[i] = Math.min(west[i], lon[k]);
                east[i] = Math.max(east[i], lon[k]);
                south[i] = Math.min(south[i], lat[k]);
                north[i] = Math.max(north[i], lat[k]);
            }
        }
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

    return {
        count, first, lon, lat, west, east, south, north, bounds, nearest, distance, toward,
        at: (k) => ({ lon: lon[k], lat: lat[k] }),
        start: (i) => ({ lon: lon[first[i]], lat: lat[first[i]] }),
        end: (i) => ({ lon: lon[first[i + 1] - 1], lat: lat[first[i + 1] - 1] }),
        middle: (i) => ({ lon: lon[first[i] + (size[i] >> 1)], lat: lat[first[i] + (size[i] >> 1)] })
    };
}
