// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The balance as bands whose height is kilograms a year: from the workings, and down the river.

const balance = (function () {
    const root = document.getElementById("balance");
    const GAP = 12, NODE = 12, LEAST = 17, TOP = 8, MOST_SOURCES = 8;
    const FATES = { exported: "exported", settled: "bed", "to pores": "bed", overbank: "fields", abstracted: "abstracted", "held dry": "bed", evaded: "air", lost: "lost" };
    const INPUTS = ["released", "background", "lateral", "from bed"];
    const COLORS = { river: "#2d4a73", air: "#b9895b", kept: "#8a8378", recovered: "#c9b458", exported: "#2d4a73", bed: "#7a1049", fields: "#c4404a", abstracted: "#ea8f4c", lost: "#8c8c8c" };
    let chosen = 0;

    function draw() {
        if (!data.balance || !data.balance.columns.length) {
            root.replaceChildren();
            return;
        }
        const width = Math.min(640, Math.max(310, root.clientWidth > 900 ? (root.clientWidth - 90) / 2 : root.clientWidth));
        const column = data.balance.columns[chosen];
        const river = ofRiver(column);
        root.replaceChildren(make("h2", null, say("page.balance")), make("p", "hint", say("page.balance.how")), chooser(),
            make("div", "bands", ...[data.balance.sites && data.balance.sites.length ? figureOf(say("page.balance.workings"), ofWorkings(), width) : null,
                figureOf(say("page.balance.river"), river, width)].filter((f) => f)),
            make("p", "hint", say("page.balance.closed")));
    }

    function chooser() {
        const words = (c) => [c.bound === undefined ? "" : data.bounds[c.bound], c.variant === undefined ? "" : data.variants[c.variant] || ""].filter((t) => t).join(", ");
        const select = make("select", { id: "balance-column", change: () => { chosen = Number(select.value); draw(); document.getElementById("balance-column").focus(); } },
            ...data.balance.columns.map((c, k) => make("option", { value: k, selected: k === chosen }, words(c))));
        return make("p", "buttons", make("label", { for: "balance-column" }, say("page.balance.column")), select);
    }

    /** Bands from each site or group to air, what is kept, what is got back, the river [kg/yr]. */
    function ofWorkings() {
        const bands = [];
        for (const site of few(data.balance.sites, (s) => s.used ? s.used.middle : s.river.middle)) {
            ["air", "kept", "recovered", "river"].forEach((to) => site[to] && site[to].middle > 0 && bands.push({ from: site.name, to: say("page.fate." + to), kg: site[to].middle, color: COLORS[to] }));
        }
        return bands;
    }

    /** The largest, and the rest as one. */
    function few(all, size) {
        const order = all.slice().sort((a, b) => size(b) - size(a));
        if (order.length <= MOST_SOURCES) {
            return order;
        }
        const rest = { name: say("page.balance.others", order.length - MOST_SOURCES) };
        order.slice(MOST_SOURCES).forEach((one) => Object.entries(one).forEach(([key, value]) => {
            if (value && value.middle !== undefined) {
                rest[key] = { middle: (rest[key] ? rest[key].middle : 0) + value.middle };
            }
        }));
        return [...order.slice(0, MOST_SOURCES), rest];
    }

    function ofRiver(column) {
        const sources = new Map();
        const add = (name, flows, factor) => {
            const to = sources.get(name) || sources.set(name, {}).get(name);
            Object.entries(flows).filter(([key]) => !INPUTS.includes(key)).forEach(([key, kg]) => { to[FATES[key] || "lost"] = (to[FATES[key] || "lost"] || 0) + kg * factor; });
        };
        column.contributors.forEach((flows, k) => add(data.contributors[k].name, flows, choice.it.moved.factors[k]));
        const total = (to) => Object.values(to).reduce((a, b) => a + b, 0);
        const order = [...sources].sort((a, b) => total(b[1]) - total(a[1]));
        const bands = [];
        const put = (from, to) => Object.entries(to).forEach(([fate, kg]) => kg > 0 && bands.push({ from, to: say("page.fate." + fate), kg, color: COLORS[fate] }));
        order.slice(0, MOST_SOURCES).forEach(([name, to]) => put(name, to));
        if (order.length > MOST_SOURCES) {
            const rest = {};
            order.slice(MOST_SOURCES).forEach(([, to]) => Object.entries(to).forEach(([fate, kg]) => { rest[fate] = (rest[fate] || 0) + kg; }));
            put(say("page.balance.others", order.length - MOST_SOURCES), rest);
        }
        sources.clear();
        add(say("page.balance.background"), column.background, 1);
        sources.forEach((to, name) => put(name, to));
        return bands;
    }

    function figureOf(title, bands, width) {
        return make("figure", null, make("figcaption", null, title), bands.length ? bandsOf(title, bands, width) : make("p", null, say("page.balance.nothing")),
            make("details", { class: "screen" }, make("summary", null, say("page.balance.table")), make("table", "small",
                make("thead", null, make("tr", null, ...["page.from", "page.to", "page.kilograms"].map((key) => make("th", { scope: "col" }, say(key))))),
                make("tbody", null, ...bands.map((b) => make("tr", null, make("th", { scope: "row" }, b.from), make("td", null, b.to), make("td", "number", figure(b.kg, 3))))))));
    }

    /** Two columns of nodes and the bands between them. */
    function bandsOf(title, bands, width) {
        const names = (side) => [...new Set(bands.map((b) => b[side]))];
        const sum = (side, name) => bands.filter((b) => b[side] === name).reduce((s, b) => s + b.kg, 0);
        const all = bands.reduce((s, b) => s + b.kg, 0);
        const scale = 240 / all;
        const label = Math.min(190, width * 0.36);
        const stack = (side) => {
            let y = TOP;
            return new Map(names(side).map((name) => {
                const height = Math.max(1, sum(side, name) * scale);
                const node = { y, height, used: 0, kg: sum(side, name) };
                y += Math.max(height, 2 * LEAST) + GAP;
                return [name, node];
            }));
        };
        const left = stack("from");
        const right = stack("to");
        const end = (nodes) => Math.max(...[...nodes.values()].map((n) => n.y + Math.max(n.height, 2 * LEAST)));
        const height = Math.max(end(left), end(right)) + 6;
        const x1 = label + NODE;
        const x2 = width - label - NODE;
        const ribbons = bands.slice().sort((a, b) => right.get(a.to).y - right.get(b.to).y).map((b) => ribbon(b, left.get(b.from), right.get(b.to), x1, x2, scale));
        return picture("svg", { viewBox: "0 0 " + width + " " + height, width, height, role: "img", "aria-label": title + ": " + bands.map((b) => b.from + ", " + b.to + ", " + say("page.kgyr", figure(b.kg, 2))).join("; ") },
            ...ribbons, ...nodes(left, label, label - 6, "end", width * 0.36), ...nodes(right, x2, x2 + NODE + 6, "start", width * 0.36));
    }

    function ribbon(b, from, to, x1, x2, scale) {
        const thick = Math.max(1, b.kg * scale);
        const a = from.y + from.used + thick / 2;
        const c = to.y + to.used + thick / 2;
        from.used += b.kg * scale;
        to.used += b.kg * scale;
        const middle = (x1 + x2) / 2;
        return picture("path", { d: "M" + x1 + " " + a + "C" + middle + " " + a + " " + middle + " " + c + " " + x2 + " " + c, stroke: b.color, "stroke-width": thick, class: "ribbon" },
            picture("title", null, b.from + " \u2192 " + b.to + ": " + say("page.kgyr", figure(b.kg, 3))));
    }

    function nodes(all, x, at, anchor, room) {
        return [...all].flatMap(([name, node]) => [
            picture("rect", { x, y: node.y, width: NODE, height: node.height, class: "node" }),
            picture("text", { x: at, y: node.y + 12, "text-anchor": anchor, class: "node-name" }, short(name, room / 7)),
            picture("text", { x: at, y: node.y + 28, "text-anchor": anchor }, say("page.kgyr", figure(node.kg, 3)))]);
    }

    function short(text, most) {
        return text.length > most ? text.slice(0, Math.floor(most) - 1) + "\u2026" : text;
    }

    return { draw };
})();
