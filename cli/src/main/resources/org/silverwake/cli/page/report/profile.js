// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The profile: the way of the water from the farthest head through the picked reach to the end, low to high estimate.

const profile = (function () {
    const holder = document.getElementById("profile");
    const LEFT = 62, RIGHT = 14, TOP = 26, BOTTOM = 34, HEIGHT = 250;
    let path = [];
    let starts = [];
    let drawn = null;
    let pointed = () => {};

    function reachOfChoice() {
        const picked = choice.it.picked;
        return isOnRiver(picked) ? drawnReach(picked) : worst();
    }

    /** The drawn reach with the highest estimate as the program ran. */
    function worst() {
        const shown = choice.shownBefore();
        let best = network.longest();
        shown.high.forEach((high, i) => { best = i < data.reaches.drawn && high > shown.high[best] ? i : best; });
        return best;
    }

    function draw() {
        const reach = reachOfChoice();
        const g = choice.guideline();
        path = network.way(reach);
        starts = [];
        path.reduce((sum, i) => { starts.push(sum); return sum + network.length(i); }, 0);
        const shown = choice.shown();
        const old = choice.isMoved() ? choice.shownBefore() : null;
        const width = Math.max(300, holder.clientWidth);
        drawn = axes(width, shown, old, g);
        const hint = say("page.profile.of", network.label(path[0]), network.label(path[path.length - 1]));
        holder.replaceChildren(make("h3", null, say("page.profile")), make("p", "hint", hint),
            drawn ? chart(width, shown, old, g, reach) : make("p", null, say("page.profile.none")));
    }

    function axes(width, shown, old, g) {
        const ratios = path.filter((i) => shown.answer[i] < answering.NOT_ASSESSED)
            .flatMap((i) => [shown.low[i], shown.high[i], ...(old ? [old.low[i], old.high[i]] : [])]).filter((v) => v > 0).map((v) => v * g.perSi);
        if (!ratios.length) {
            return null;
        }
        const value = g.value * g.perSi;
        const least = Math.floor(Math.log10(Math.min(...ratios, value / g.factor)));
        const most = Math.ceil(Math.log10(Math.max(...ratios, value * g.factor)));
        const total = starts[path.length - 1] + network.length(path[path.length - 1]);
        return {
            least, most, total,
            x: (meters) => LEFT + (width - LEFT - RIGHT) * meters / total,
            y: (v) => TOP + (HEIGHT - TOP - BOTTOM) * (most - Math.max(least, Math.log10(v))) / (most - least),
            along: (x) => Math.max(0, Math.min(total, (x - LEFT) / (width - LEFT - RIGHT) * total))
        };
    }

    function chart(width, shown, old, g, reach) {
        const { x, y, least, most, total } = drawn;
        const parts = [];
        for (let e = least; e <= most; e += Math.max(1, Math.ceil((most - least) / 6))) {
            const at = y(Math.pow(10, e));
            parts.push(line(LEFT, at, width - RIGHT, at, "grid"), text(LEFT - 6, at + 4, figure(Math.pow(10, e), 1), "end"));
        }
        const step = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find((s) => total / 1000 / s <= width / 90) || 2000;
        for (let km = 0; km * 1000 <= total; km += step) {
            parts.push(line(x(km * 1000), HEIGHT - BOTTOM, x(km * 1000), HEIGHT - BOTTOM + 5, "axis"), text(x(km * 1000), HEIGHT - BOTTOM + 18, figure(km, 4), "middle"));
        }
        parts.push(text(width - RIGHT, HEIGHT - 2, say("page.profile.along"), "end"), text(LEFT - 50, 12, say("page.profile.unit", unit(g.unit)), "start"));
        path.forEach((i, k) => bars(parts, shown, old, g, i, starts[k], y));
        const v = y(g.value * g.perSi);
        parts.push(line(LEFT, v, width - RIGHT, v, "guide"), haloed(LEFT + 4, v - 5, say("page.profile.guide"), "start"));
        marks(parts, width);
        const k = path.indexOf(reach);
        if (isOnRiver(choice.it.picked)) {
            parts.push(picture("rect", { x: x(starts[k]), y: TOP, width: Math.max(2, x(starts[k] + network.length(reach)) - x(starts[k])), height: HEIGHT - TOP - BOTTOM, class: "picked" }));
        }
        const pointer = picture("g", { class: "pointer" });
        const svg = picture("svg", { viewBox: "0 0 " + width + " " + HEIGHT, width, height: HEIGHT, role: "img", "aria-label": say("page.profile.label", network.label(path[0]), network.label(path[path.length - 1])) }, ...parts, pointer);
        svg.addEventListener("pointermove", (event) => move(event, svg));
        svg.addEventListener("pointerleave", () => { point(-1, 0); pointed(-1, 0); });
        svg.addEventListener("click", (event) => choice.change("picked", { picked: { reach: at(event, svg).reach } }));
        return svg;
    }

    function bars(parts, shown, old, g, i, start, y) {
        if (shown.answer[i] >= answering.NOT_ASSESSED) {
            return;
        }
        const from = drawn.x(start);
        const width = Math.max(0.5, drawn.x(start + network.length(i)) - from);
        const high = y(shown.high[i] * g.perSi);
        const low = Math.max(high + 3, y(Math.max(shown.low[i] * g.perSi, 1e-300)));
        if (old && old.answer[i] < answering.NOT_ASSESSED) {
            const top = y(old.high[i] * g.perSi);
            parts.push(picture("rect", { x: from, y: top, width, height: Math.max(3, y(Math.max(old.low[i] * g.perSi, 1e-300)) - top), class: "old" }));
        }
        parts.push(picture("rect", { x: from, y: high, width: width + 0.3, height: low - high, fill: data.shades[shown.shade[i]].color }));
    }

    /** Names of places along the way, where there is room. */
    function marks(parts, width) {
        let free = LEFT;
        const along = data.places.map((place) => ({ place, k: path.indexOf(place.reach) })).filter((p) => p.k >= 0).sort((a, b) => a.k - b.k);
        for (const { place, k } of along) {
            const x = drawn.x(starts[k] + network.length(path[k]) / 2);
            parts.push(line(x, TOP - 4, x, HEIGHT - BOTTOM, "place"));
            const room = place.name.length * 6.5;
            if (x - room / 2 > free && x + room / 2 < width) {
                parts.push(text(x, TOP - 8, place.name, "middle"));
                free = x + room / 2 + 6;
            }
        }
    }

    function line(x1, y1, x2, y2, look) {
        return picture("line", { x1, y1, x2, y2, class: look });
    }

    function text(x, y, words, anchor) {
        return picture("text", { x, y, "text-anchor": anchor }, words);
    }

    function haloed(x, y, words, anchor) {
        return picture("text", { x, y, "text-anchor": anchor, class: "haloed" }, words);
    }

    function at(event, svg) {
        const box = svg.getBoundingClientRect();
        const along = drawn.along((event.clientX - box.left) * svg.viewBox.baseVal.width / box.width);
        let k = starts.length - 1;
        while (k > 0 && starts[k] > along) {
            k--;
        }
        return { reach: path[k], part: Math.min(1, (along - starts[k]) / network.length(path[k])) };
    }

    function move(event, svg) {
        const { reach, part } = at(event, svg);
        point(reach, part);
        pointed(reach, part);
    }

    /** Shows a place of a reach, if the way leads through it. */
    function point(reach, part) {
        const pointer = holder.querySelector(".pointer");
        if (!pointer || !drawn) {
            return;
        }
        const k = path.indexOf(reach);
        if (k < 0) {
            pointer.replaceChildren();
            return;
        }
        const x = drawn.x(starts[k] + part * network.length(reach));
        const shown = choice.shown();
        const has = shown.answer[reach] < answering.NOT_ASSESSED;
        const words = network.label(reach) + ": " + (has ? card.amounts(shown, choice.guideline(), reach) : answerWords(shown.answer[reach]));
        const left = x > holder.clientWidth / 2;
        pointer.replaceChildren(line(x, TOP, x, HEIGHT - BOTTOM, "here"), haloed(x + (left ? -6 : 6), TOP + 14, words, left ? "end" : "start"));
    }

    return { draw, point, start: (show) => { pointed = show; } };
})();
