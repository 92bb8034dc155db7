// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// What the reader has chosen: value compared with, flow state, levers, what is picked. It stands in the link behind #.

const choice = (function () {
    const asRun = model.moved(new Float64Array(data.levers.length));
    const usual = Math.max(0, data.guidelines.findIndex((g) => g.isDefault));
    const usualLanguage = language;
    const it = { guideline: usual, state: -1, picked: null, ways: asRun.ways, closed: asRun.closed, moved: asRun };
    const listeners = [];
    const before = new Map();
    let after = new Map();

    function cached(map, moved, guideline, state) {
        const key = guideline + " " + state;
        if (!map.has(key)) {
            map.set(key, answering.answers(guideline, state, moved));
        }
        return map.get(key);
    }

    function isMoved() {
        return it.ways.some((way) => way > 0);
    }

    /** Takes a change over; what: "view", "ways", "picked" or "all". A settled one goes into the link. */
    function change(what, values, settled) {
        Object.assign(it, values);
        if (what === "ways" || what === "all") {
            it.moved = isMoved() ? model.moved(it.ways, it.closed) : asRun;
            it.closed = it.moved.closed;
            after = new Map();
        }
        listeners.forEach((listener) => listener(what));
        if (settled !== false && location.hash.slice(1) !== link()) {
            location.hash = link();
        }
    }

    /** What differs from the page as it opens, as it stands in a link. */
    function link() {
        const parts = new URLSearchParams();
        if (it.guideline !== usual) {
            parts.set("g", data.guidelines[it.guideline].id);
        }
        if (it.state >= 0) {
            parts.set("s", data.states[it.state].name);
        }
        if (it.picked && it.picked.reach !== undefined) {
            parts.set("r", network.id(it.picked.reach));
        }
        if (it.picked && it.picked.place !== undefined) {
            parts.set("p", data.places[it.picked.place].name);
        }
        if (it.picked && it.picked.group !== undefined) {
            parts.set("a", data.contributors[data.groups[it.picked.group].contributor].name);
        }
        if (language !== usualLanguage) {
            parts.set("l", language);
        }
        const moved = data.levers.map((lever, l) => [lever.id, it.ways[l]]).filter((w) => w[1] > 0);
        if (moved.length) {
            parts.set("w", moved.map(([id, way]) => id + "~" + Number(way.toFixed(4))).join("_"));
        }
        const closed = data.levers.filter((lever, l) => it.closed[l]).map((lever) => lever.id);
        if (closed.length) {
            parts.set("c", closed.join("_"));
        }
        return parts.toString();
    }

    /** What a link says; what it does not say is as the page opens, what it says wrongly too. */
    function read() {
        const parts = new URLSearchParams(location.hash.slice(1));
        const find = (list, test) => Math.max(-1, list.findIndex(test));
        const guideline = find(data.guidelines, (g) => g.id === parts.get("g"));
        const reach = data.reaches.id.indexOf(parts.get("r"));
        const place = find(data.places, (p) => p.name === parts.get("p"));
        const group = find(data.groups, (g) => data.contributors[g.contributor].name === parts.get("a"));
        const ways = new Float64Array(data.levers.length);
        (parts.get("w") || "").split("_").forEach((word) => {
            const [id, way] = word.split("~");
            const l = find(data.levers, (lever) => lever.id === id);
            if (l >= 0 && Number(way) >= 0 && Number(way) <= 1) {
                ways[l] = Number(way);
            }
        });
        const closed = data.levers.map((lever) => !!lever.closed && (parts.get("c") || "").split("_").includes(lever.id));
        language = texts[parts.get("l")] ? parts.get("l") : usualLanguage;
        change("all", {
            ways, closed, guideline: guideline < 0 ? usual : guideline, state: find(data.states, (s) => s.name === parts.get("s")),
            picked: reach >= 0 ? { reach } : place >= 0 ? { place } : group >= 0 ? { group } : null
        }, false);
    }

    window.addEventListener("hashchange", () => location.hash.slice(1) !== link() && read());

    return {
        it, change, link, read, isMoved,
        listen: (listener) => listeners.push(listener),
        guideline: () => data.guidelines[it.guideline],
        /** Answers as the program ran, and with the levers as they are now. */
        present: (guideline, state) => cached(before, asRun, guideline, state),
        now: (guideline, state) => cached(isMoved() ? after : before, it.moved, guideline, state),
        shown: () => cached(isMoved() ? after : before, it.moved, it.guideline, it.state),
        shownBefore: () => cached(before, asRun, it.guideline, it.state)
    };
})();
