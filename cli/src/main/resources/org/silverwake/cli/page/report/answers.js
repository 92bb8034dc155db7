// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// From values to the four answers, as the program gives them: docs/reference/report-data.md, "The answer of a reach".

const answering = (function () {
    const ABOVE = 0, MAY_BE = 1, BELOW = 2, NOT_ASSESSED = 3, NONE = 4;
    const YEAR_DAYS = 365.25;
    const WINDOW_DAYS = 30;
    const shade = Object.fromEntries(data.shades.map((s, k) => [s.key, k]));
    const reason = Object.fromEntries(data.reasons.map((r, k) => [r.key, k]));
    const dry = data.states.map((s) => model.mark(s.dry || []));
    const cyanideDoubt = model.mark(data.reaches.cyanideDoubt || []);

    /** The flow states that count, in which a measure has values of its own. */
    function statesOf(g, state) {
        return g.isOneForAllStates ? [0] : state >= 0 ? [state] : data.states.map((_, s) => s);
    }

    /** Mean over states of one kind of value as the guideline asks. */
    function average(averaging, values, shares) {
        if (averaging === "year") {
            let sum = 0;
            let share = 0;
            values.forEach((v, s) => { sum += shares[s] * v; share += shares[s]; });
            return sum / share;
        }
        if (averaging === "30-day") {
            const order = values.map((v, s) => [v, shares[s]]).sort((a, b) => b[0] - a[0]);
            let filled = 0;
            let sum = 0;
            for (const [v, share] of order) {
                const days = Math.min(WINDOW_DAYS - filled, share * YEAR_DAYS);
                sum += days * v;
                filled += days;
            }
            return sum / filled;
        }
        return Math.max(...values);
    }

    /**
     * The answers of all reaches by a guideline, in one flow state or, where it is -1, as the guideline asks.
     * Values are SI; reasons and shades are indices into the data's lists, -1 for none.
     */
    function answers(guideline, state, moved) {
        const g = data.guidelines[guideline];
        const n = model.n;
        const all = {
            guideline, state, low: new Float64Array(n), high: new Float64Array(n), background: new Float64Array(n),
            answer: new Uint8Array(n), shade: new Uint8Array(n), reason: new Int8Array(n).fill(-1),
            hatched: new Uint8Array(n), fromBackground: new Uint8Array(n), nearBank: nearBank(g, state, moved.factors)
        };
        const states = statesOf(g, state);
        const values = g.measure < 0 ? [] : states.map((s) => model.values(g.measure, s, moved));
        const left = model.mark(g.leftOut);
        if (g.scope === "drinking-place") { // compared where people drink, nowhere else
            const drunk = new Set(data.places.filter((place) => place.drinking).map((place) => place.reach));
            left.forEach((_, i) => { left[i] = left[i] || !drunk.has(i) ? 1 : 0; });
        }
        const bank = new Uint8Array(n);
        model.contributors.forEach((c, k) => moved.factors[k] > 0 && c.withinOneWidth.forEach((i) => { bank[i] = 1; }));
        for (let i = 0; i < n; i++) {
            if (left[i]) {
                all.answer[i] = NONE;
                all.nearBank[i] = 0;
                all.shade[i] = shade["does-not-apply"];
            } else {
                answer(all, g, i, values, states, bank[i]);
            }
        }
        return all;
    }

    function nearBank(g, state, factors) {
        const marks = new Uint8Array(model.n);
        if (g.nearBank) {
            g.nearBank.forEach((reaches, s) => (state < 0 || s === state) && model.runs(reaches).forEach((i) => { marks[i] = 1; }));
        } else if (g.medium !== "fish" && g.medium !== "bed sediment") {
            model.contributors.forEach((c, k) => factors[k] > 0 && c.nearBank.forEach((reaches, s) =>
                (state < 0 || s === state) && reaches.forEach((i) => { marks[i] = 1; })));
        }
        return marks;
    }

    function without(all, i, why) {
        all.answer[i] = NOT_ASSESSED;
        all.reason[i] = why;
        all.shade[i] = shade[why === reason.NO_WATER ? "no-water" : "not-assessed"];
        all.nearBank[i] = 0;
    }

    function answer(all, g, i, values, states, bank) {
        const fish = g.medium === "fish";
        if (g.measure < 0) {
            return without(all, i, reason.NOT_MODELLED);
        }
        if (!fish && data.reaches.unassessed[i] >= 0) {
            return without(all, i, data.reaches.unassessed[i]);
        }
        if (!fish && bank) {
            return without(all, i, reason.NEAR_BANK_OUTFALL);
        }
        const used = states.map((_, k) => k).filter((k) => !Number.isNaN(values[k].low[i]));
        if (!used.length) {
            const wet = states.some((s) => !dry[s][i]);
            return without(all, i, fish ? reason.NO_WATER : g.medium === "bed sediment" ? reason.NO_SOLIDS_DEPOSIT
                : wet ? reason.NO_SUSPENDED_SOLIDS : reason.NO_WATER);
        }
        const averaging = all.state >= 0 ? "any-state" : g.averaging;
        const shares = used.map((k) => data.states[states[k]].share);
        const mean = (which) => average(averaging, used.map((k) => values[k][which][i]), shares);
        const a = mean("low");
        const b = mean("high");
        return judge(all, g, i, Math.min(a, b), Math.max(a, b), mean("background"));
    }

    function doubtOf(g, i) {
        if (g.doubt) {
            return g.doubt[i];
        }
        const doubt = data.reaches.doubt[i];
        return doubt < 0 && g.substance === "cyanide" && cyanideDoubt[i] ? data.reaches.cyanideDoubtReason : doubt;
    }

    function judge(all, g, i, low, high, background) {
        const doubt = doubtOf(g, i);
        const fish = g.medium === "fish";
        if (high === 0) {
            return without(all, i, doubt >= 0 ? doubt : fish ? reason.NO_METHYLMERCURY
                : g.substance === "cyanide" ? reason.NO_CYANIDE_UPSTREAM : reason.NO_SOURCE_UPSTREAM);
        }
        const f = g.factor;
        const is = low / g.value > f ? ABOVE : high / g.value < 1 / f ? BELOW : MAY_BE;
        if (is === BELOW && doubt >= 0) {
            return without(all, i, doubt);
        }
        all.low[i] = low;
        all.high[i] = high;
        all.background[i] = background;
        all.answer[i] = is;
        all.shade[i] = shade[is === ABOVE ? (low / g.value > data.rule.farAbove * f ? "far-above" : "above")
            : is === MAY_BE ? (low / g.value > 1 ? "likely-above" : "may-be-above") : "below"];
        all.hatched[i] = !fish && high > data.rule.boundsRatio * low ? 1 : 0;
        all.fromBackground[i] = background > g.value ? 1 : 0;
        return undefined;
    }

    return { ABOVE, MAY_BE, BELOW, NOT_ASSESSED, NONE, KEYS: ["above", "may-be-above", "below", "not-assessed"], answers, statesOf };
})();
