// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The network: reaches with their lines, which reach lies nearest, what hangs together.

const network = (function () {
    const MILLION = 1e6;

    const r = data.reaches;
    const shape = geometry(r.points, r.size, MILLION);
    const count = shape.count;
    const degree = new Map();
    const lines = new Map();
    r.points = null;
    for (let i = 0; i < count; i++) {
        for (const node of [r.from[i], r.to[i]]) {
            degree.set(node, (degree.get(node) || 0) + 1);
        }
        if (!lines.has(r.line[i])) {
            lines.set(r.line[i], []);
        }
        lines.get(r.line[i]).push(i);
    }
    lines.forEach((reaches) => reaches.sort((a, b) => r.along[a] - r.along[b]));

    function name(i) {
        return r.name[i] < 0 ? "" : r.names[r.name[i]];
    }

    /** A reach's id, with the river's name if it has one. */
    function label(i) {
        return name(i) ? say("reach.named", { id: r.id[i], name: name(i) }) : r.id[i];
    }

    return Object.assign(shape, {
        id: (i) => r.id[i],
        feature: (i) => r.features[r.feature[i]],
        name, label,
        length: (i) => r.length[i],
        order: (i) => r.order[i],
        isAgainst: (i) => r.against[i] === 1,
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
        }
    });
})();
