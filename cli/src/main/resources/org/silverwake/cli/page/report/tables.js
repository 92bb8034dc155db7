// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Tables: sorted by their headings, searched, saved as CSV. They say in words what the map shows in color.

const tables = (function () {
    const STEP = 40;
    const root = document.getElementById("tables");
    const kept = {}; // per table: word searched for, column and direction of sorting, rows shown

    /** A column: heading, value of a row, words of the value. */
    function column(key, value, words, isNumber) {
        return { key, value, words: words || value, isNumber: !!isNumber };
    }

    function estimates(reach, at) {
        const shown = choice.shown();
        const g = choice.guideline();
        const has = (row) => at(row, shown) < answering.NOT_ASSESSED;
        const number = (which, digits) => [(row) => (has(row) ? shown[which][reach(row)] * g.perSi : NaN), (row) => (has(row) ? figure(shown[which][reach(row)] * g.perSi, digits) : "")];
        return [
            column("page.answer", (row) => answerRank(at(row, shown)), (row) => answerWords(at(row, shown))),
            column("page.low", ...number("low", 2), true), column("page.high", ...number("high", 2), true),
            column("page.times", (row) => (has(row) ? shown.high[reach(row)] / g.value : NaN), (row) => (has(row) ? range(shown.low[reach(row)] / g.value, shown.high[reach(row)] / g.value, 2) : ""), true),
            column("page.why", (row) => (at(row, shown) === answering.NOT_ASSESSED && shown.reason[reach(row)] >= 0 ? data.reasons[shown.reason[reach(row)]].words : ""))
        ];
    }

    /** What is picked by the name of what releases: the reach at a site, the area of a group. */
    function sourceOf({ c, k }) {
        const group = data.groups.findIndex((g) => g.contributor === k);
        return c.reach !== undefined ? { reach: c.reach } : group >= 0 ? { group } : null;
    }

    function answerRank(answer) {
        return answer;
    }

    const kinds = {
        places: () => ({
            rows: data.places.map((place, p) => ({ place, p })), pick: (row) => ({ place: row.p }), name: (row) => row.place.name,
            columns: [column("page.use", (row) => row.place.uses), column("page.people", (row) => (row.place.people === null ? NaN : row.place.people), (row) => (row.place.people === null ? "" : figure(row.place.people, 7)), true),
                column("page.river", (row) => (row.place.reach >= 0 ? network.name(row.place.reach) || network.id(row.place.reach) : "")),
                ...estimates((row) => row.place.reach, (row, shown) => totals.atPlace(row.place, shown))]
        }),
        reaches: () => ({
            rows: Array.from({ length: data.reaches.drawn }, (_, i) => ({ i })), pick: (row) => ({ reach: row.i }), name: (row) => network.id(row.i),
            columns: [column("page.river", (row) => network.name(row.i)), column("page.length", (row) => network.length(row.i) / 1000, (row) => figure(network.length(row.i) / 1000, 3), true),
                ...estimates((row) => row.i, (row, shown) => shown.answer[row.i])]
        }),
        sources: () => ({
            rows: data.contributors.map((c, k) => ({ c, k })), pick: (row) => sourceOf(row), name: (row) => row.c.name,
            columns: [...(isPublic ? [] : [column("page.group", (row) => row.c.group || ""), column("page.path", (row) => row.c.path || "")]),
                column("page.kilograms", (row) => row.c.kilograms, (row) => figure(row.c.kilograms, 3), true),
                column("page.kilograms.now", (row) => row.c.kilograms * choice.it.moved.factors[row.k], (row) => figure(row.c.kilograms * choice.it.moved.factors[row.k], 3), true)]
        })
    };

    function draw() {
        ["places", "reaches", "sources"].forEach(drawOne);
    }

    function drawOne(kind) {
        const table = kinds[kind]();
        const state = kept[kind] || (kept[kind] = { word: "", by: -1, down: false, shown: STEP });
        const holder = document.getElementById("table-" + kind);
        holder.hidden = !table.rows.length;
        const first = column("page." + kind + ".name", table.name);
        const columns = [first, ...table.columns];
        const rows = sorted(table.rows.filter((row) => !state.word || columns.some((c) => plain(String(c.words(row))).includes(state.word))), columns, state);
        state.rows = rows;
        const body = rows.slice(0, state.shown).map((row) => make("tr", null, ...columns.map((c, k) => cell(c, k, row, table))));
        const grid = make("div", { class: "grid", role: "region", tabindex: "0", "aria-label": say("page." + kind) }, make("table", null,
            make("thead", null, make("tr", null, ...columns.map((c, k) => heading(kind, c, k, state)))), make("tbody", null, ...body)));
        const more = rows.length > state.shown ? button(say("page.more", rows.length - state.shown), () => { state.shown += 5 * STEP; drawOne(kind); }, { class: "quiet" }) : null;
        const old = holder.querySelector("input");
        if (old && document.activeElement === old) { // the field is being typed in: only what is below it changes
            holder.querySelector(".grid").replaceWith(grid);
            holder.querySelector(".rest").replaceChildren(more || "");
            return;
        }
        const field = make("input", { type: "search", id: "find-" + kind, input: () => { state.word = plain(field.value.trim()); drawOne(kind); } });
        field.value = state.typed || "";
        field.addEventListener("input", () => { state.typed = field.value; });
        const hint = kind === "sources" ? "" : comparedWith() + " " + say("page.table.unit", unit(choice.guideline().unit)) + ".";
        holder.replaceChildren(make("h3", null, say("page." + kind)), make("p", "hint", hint), make("p", "buttons",
            make("label", { for: "find-" + kind }, say("page.find")), field, button(say("page.csv"), () => csv(kind, columns, state.rows))), grid, make("p", "rest", more || ""));
    }

    function heading(kind, c, k, state) {
        const sort = state.by === k ? (state.down ? "descending" : "ascending") : "none";
        return make("th", { scope: "col", "aria-sort": sort, class: c.isNumber ? "number" : "" }, button(say(c.key) + (sort === "none" ? "" : state.down ? " \u25bc" : " \u25b2"), () => {
            Object.assign(state, { by: k, down: state.by === k ? !state.down : c.isNumber });
            drawOne(kind);
            document.getElementById("table-" + kind).querySelectorAll("th button")[k].focus();
        }));
    }

    function cell(c, k, row, table) {
        const words = c.words(row);
        if (k > 0) {
            const shade = c.key === "page.answer" ? "answer answer-" + c.value(row) : c.isNumber ? "number" : "";
            return make("td", shade, words);
        }
        const picked = table.pick(row);
        return make("th", { scope: "row" }, picked ? button(words, () => { choice.change("picked", { picked }); document.getElementById("explore").scrollIntoView({ block: "start" }); }, { class: "link" }) : words);
    }

    function sorted(rows, columns, state) {
        if (state.by < 0) {
            return rows;
        }
        const value = columns[state.by].value;
        const sign = state.down ? -1 : 1;
        return rows.slice().sort((a, b) => {
            const x = value(a);
            const y = value(b);
            if (typeof x === "number") {
                return Number.isNaN(x) ? 1 : Number.isNaN(y) ? -1 : sign * (x - y);
            }
            return sign * new Intl.Collator(language, { numeric: true }).compare(x, y);
        });
    }

    /** Numbers in full, with a point; a text that a spreadsheet would take for a formula gets an apostrophe. */
    function csv(kind, columns, rows) {
        const needsQuotes = /[",\r\n]/;
        const formula = /^[=+\-@\t]/;
        const quoted = (value) => {
            const text = typeof value === "number" ? (Number.isNaN(value) ? "" : String(value)) : String(value).replace(formula, "'$&");
            return needsQuotes.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text;
        };
        const lines = [columns.map((c) => say(c.key) + (c.isNumber && /low|high/.test(c.key) ? " (" + choice.guideline().unit + ")" : "")), ...rows.map((row) => columns.map((c) => (c.isNumber ? c.value(row) : c.words(row))))];
        download(kind + ".csv", "text/csv", "\ufeff" + lines.map((line) => line.map(quoted).join(",")).join("\r\n") + "\r\n");
    }

    return { draw, start: () => root.append(...["places", "reaches", "sources"].map((kind) => make("section", { id: "table-" + kind, class: "table" }))) };
})();
