// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Values of reaches as sums of what each contributor adds: the arithmetic of docs/reference/report-data.md.

const model = (function () {
    const NO_VALUE = 255;
    const n = data.reaches.count;
    const cache = new Map();

    function bytes(text) {
        return Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
    }

    function block(i, size) {
        if (i < 0) {
            return new Float32Array(size);
        }
        if (!cache.has(i)) {
            cache.set(i, new Float32Array(bytes(data.blocks[i]).buffer));
        }
        return cache.get(i);
    }

    /** Reaches of a delta-coded list. */
    function runs(list) {
        let at = 0;
        return Int32Array.from(list, (step) => (at += step));
    }

    function mark(list) {
        const marks = new Uint8Array(n);
        runs(list).forEach((i) => { marks[i] = 1; });
        return marks;
    }

    const contributors = data.contributors.map((c) => ({
        reaches: runs(c.reaches), withinOneWidth: runs(c.withinOneWidth), nearBank: c.nearBank.map(runs)
    }));

    /** A value set made ready: rows of reaches, blocks opened. */
    const sets = new Map();
    function ready(measure, state) {
        const key = measure + " " + state;
        if (!sets.has(key)) {
            const set = data.measures[measure].states[state];
            const counts = bytes(set.counts);
            const first = new Int32Array(n + 1);
            for (let i = 0; i < n; i++) {
                first[i + 1] = first[i] + (counts[i] === NO_VALUE ? 0 : counts[i]);
            }
            sets.set(key, {
                counts, first, background: block(set.background, n),
                columns: set.columns.map((c) => ({
                    role: c.role, bound: c.bound, variant: c.variant, base: block(c.base, first[n]),
                    responses: c.responses.map((k) => (k < 0 ? null : block(k)))
                }))
            });
        }
        return sets.get(key);
    }

    /** The rows of a column at factors of the contributors. */
    function rows(set, column, factors) {
        const sum = Float64Array.from(column.base);
        column.responses.forEach((response, k) => {
            if (response && factors[k] !== 0) {
                const f = factors[k];
                let at = 0;
                for (const i of contributors[k].reaches) {
                    for (let row = set.first[i]; row < set.first[i + 1]; row++) {
                        sum[row] += f * response[at++];
                    }
                }
            }
        });
        return sum;
    }

    /** Low, high and background of every reach [SI]; NaN where there is no value. */
    function values(measure, state, moved) {
        const { factors } = moved;
        const set = ready(measure, state);
        const low = new Float64Array(n).fill(Infinity);
        const high = new Float64Array(n);
        for (const column of set.columns) {
            const sum = rows(set, column, factors);
            for (let i = 0; i < n; i++) {
                let value = set.counts[i] === 0 ? set.background[i] : 0;
                for (let row = set.first[i]; row < set.first[i + 1]; row++) {
                    value = Math.max(value, sum[row]);
                }
                low[i] = column.role === "high" ? low[i] : Math.min(low[i], value);
                high[i] = column.role === "low" ? high[i] : Math.max(high[i], value);
            }
        }
        for (let i = 0; i < n; i++) {
            if (set.counts[i] === NO_VALUE) {
                low[i] = high[i] = NaN;
            }
        }
        data.levers.forEach((lever, l) => {
            if (moved.ways[l] > 0 && lever.error) {
                correct(lever.error, measure, state, moved.ways[l], low, high);
            }
            if (moved.closed[l] && lever.closed) {
                correct(lever.closed, measure, state, 1, low, high);
            }
        });
        return { low, high, background: set.background };
    }

    /** What a full run found at a lever's end beside mercury in proportion: tailings and water that change with it. */
    function correct(error, measure, state, way, low, high) {
        const ratios = (error.measures[measure] || [])[state];
        if (!ratios) {
            return;
        }
        const reaches = runs(error.reaches);
        const [below, above] = ratios.map((k) => block(k, reaches.length));
        reaches.forEach((i, k) => {
            low[i] *= Math.pow(below[k], way);
            high[i] *= Math.pow(above[k], way);
        });
    }

    /** What background and each contributor add to a reach's high estimate [SI], at its highest spot. */
    function parts(measure, state, { factors }, reach) {
        const set = ready(measure, state);
        let best = null;
        for (const column of set.columns.filter((c) => c.role !== "low")) {
            for (let row = set.first[reach]; row < set.first[reach + 1]; row++) {
                const added = column.responses.map((response, k) => (response
                    ? factors[k] * (response[offset(set, k, reach) + row - set.first[reach]] || 0) : 0));
                const total = added.reduce((a, b) => a + b, column.base[row]);
                if (!best || total > best.total) {
                    best = { total, rest: column.base[row], added };
                }
            }
        }
        return best;
    }

    /** Where a reach's rows begin in a contributor's response; -1 beyond its end where it lies elsewhere. */
    function offset(set, k, reach) {
        let at = 0;
        for (const i of contributors[k].reaches) {
            if (i === reach) {
                return at;
            }
            at += set.first[i + 1] - set.first[i];
        }
        return Infinity;
    }

    /**
     * Levers moved so far [0 to 1] toward their other ends, and the factors of the contributors that this makes; of those at their
     * ends, which close altogether, tailings and water gone with the mercury.
     */
    function moved(ways, closed) {
        const f = new Float64Array(contributors.length).fill(1);
        data.levers.forEach((lever, l) => lever.of.forEach((o) => { f[o.contributor] *= 1 + ways[l] * (o.atEnd - 1); }));
        return { ways, closed: Array.from(ways, (way, l) => way === 1 && !!closed && !!closed[l]), factors: f };
    }

    return { n, runs, mark, values, parts, moved, contributors };
})();
