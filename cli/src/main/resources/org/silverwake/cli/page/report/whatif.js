// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// What if less were released: a slider for each site, group or practice, and what that changes.

const whatif = (function () {
    const root = document.getElementById("whatif");
    const MANY = 8; // above so many sliders of a kind, they are folded away
    const STEPS = 100;
    const sliders = [];

    /** The whole panel; sliders stay as they are while they are moved. */
    function build() {
        sliders.length = 0;
        if (!data.whatIf.possible) {
            root.replaceChildren(make("h3", null, say("page.whatif")), make("p", null, data.whatIf.reason || ""));
            return;
        }
        const kinds = ["practice", "group", "site"].filter((kind) => data.levers.some((lever) => lever.kind === kind));
        root.replaceChildren(...[make("h3", null, say("page.whatif")), make("p", "hint", say("page.whatif.how")),
            make("div", { id: "effect", class: "effect" }),
            make("p", "buttons", button(say("page.whatif.reset"), reset), button(say("page.whatif.save"), save), button(say("page.whatif.link"), copy),
                make("span", { id: "copied", role: "status" })),
            ...kinds.map(kindOf),
            data.whatIf.closedTogether ? make("p", "hint", say("page.whatif.closedTogether", atMost(data.whatIf.closedTogether.relative))) : null,
            data.whatIf.together ? make("p", "hint", say("page.whatif.together", atMost(data.whatIf.together.relative))) : null,
            make("p", "hint", say("page.whatif.water"))].filter((part) => part));
        effect();
    }

    function kindOf(kind) {
        const all = data.levers.map((lever, l) => [lever, l]).filter(([lever]) => lever.kind === kind);
        const rows = all.map(([lever, l]) => row(lever, l));
        const moved = all.some(([, l]) => choice.it.ways[l] > 0);
        const box = make("details", { class: "levers", open: rows.length <= MANY || moved }, make("summary", null, say("page.whatif." + kind), make("span", "count", String(rows.length))));
        box.append(make("fieldset", null, make("legend", "unseen", say("page.whatif." + kind)), ...rows));
        return box;
    }

    function row(lever, l) {
        const input = make("input", {
            type: "range", id: "lever-" + l, min: 0, max: STEPS, step: 1, "aria-describedby": "lever-note-" + l,
            input: () => move(l, Number(input.value), false), change: () => move(l, Number(input.value), true)
        });
        const output = make("output", { for: "lever-" + l });
        const box = lever.closed ? make("input", { type: "checkbox", id: "closes-" + l, change: () => close(l, box.checked) }) : null;
        sliders[l] = { input, output, box };
        const element = make("div", "lever", make("label", { for: "lever-" + l }, lever.label), output, input, make("p", { class: "hint", id: "lever-note-" + l }, note(lever)),
            box ? make("p", "closes", box, make("label", { for: "closes-" + l }, say("page.whatif.closes"))) : null);
        show(l);
        return element;
    }

    /** A slider of a practice counts up from none, that of a site or group down from all. */
    function isDown(lever) {
        return lever.kind !== "practice";
    }

    function show(l) {
        const lever = data.levers[l];
        const way = choice.it.ways[l];
        const part = isDown(lever) ? 1 - way : way;
        const { input, output, box } = sliders[l];
        if (box) {
            box.checked = choice.it.closed[l];
        }
        if (document.activeElement !== input || Number(input.value) / STEPS !== part) {
            input.value = String(part * STEPS);
        }
        const words = say("page.whatif." + lever.kind + ".at", percent(part));
        output.textContent = words;
        input.setAttribute("aria-valuetext", words);
    }

    function note(lever) {
        const parts = [say("page.whatif.kilograms", figure(lever.kilogramsNow, 3), figure(lever.kilogramsAtEnd, 3))];
        const deviation = lever.error && (lever.error.halfway || lever.error.uncorrected);
        parts.push(lever.exact ? say("page.whatif.exact") : deviation ? say("page.whatif.approximate", atMost(Math.max(deviation.relative, 0.001))) : say("page.whatif.unknown"));
        if (lever.closed) {
            parts.push(say("page.whatif.closed", atMost(lever.closed.uncorrected.relative)));
        }
        if (lever.airAtEnd) {
            parts.push(say("page.whatif.air", figure(lever.airAtEnd, 2)));
        }
        if (lever.cost) {
            parts.push(say("page.whatif.cost", range(lever.cost.low, lever.cost.high, 2), data.meta.currency || ""));
        }
        if (lever.note) {
            parts.push(lever.note);
        }
        return parts.join(" ");
    }

    function move(l, value, settled) {
        const part = value / STEPS;
        const ways = Float64Array.from(choice.it.ways);
        ways[l] = isDown(data.levers[l]) ? 1 - part : part;
        choice.change("ways", { ways }, settled);
    }

    /** Closes altogether, which is the slider's end and more; or has mercury alone stop. */
    function close(l, isClosed) {
        const ways = Float64Array.from(choice.it.ways);
        const closed = Array.from(choice.it.closed);
        ways[l] = isClosed ? 1 : ways[l];
        closed[l] = isClosed;
        choice.change("ways", { ways, closed });
    }

    function reset() {
        choice.change("ways", { ways: new Float64Array(data.levers.length) });
        root.querySelector("button").focus();
    }

    /**
     * The scenario with what was tried as its section "tried", which the program runs; without the scenario's text, that section
     * alone. What has no name of its own in the scenario, groups that were put together, stands as a remark.
     */
    function saved() {
        const text = (data.source.find((file) => file.role === "scenario") || { text: "" }).text;
        const quoted = (word) => JSON.stringify(String(word).replace(/[\r\n]+/g, " "));
        const remark = (line) => "# " + line.replace(/[\r\n]+/g, " ");
        const { practices, sites, closed, others } = trial();
        const section = [
            ...entriesOf("practices", practices, quoted), ...entriesOf("sites", sites, quoted),
            ...(closed.length ? ["  closed: [" + closed.map(quoted).join(", ") + "]"] : [])
        ];
        return [
            remark(data.meta.title + ", " + data.meta.date + ": tried on the report page, not the present"), remark("link: #" + choice.link()),
            remark(text ? "keep it in the folder of the scenario, then: silverwake run tried.yaml" : "put this into a copy of the scenario, then run that"),
            ...(text ? [withoutTrial(text)] : []), ...(section.length ? ["tried:", ...section] : []),
            ...(others.length ? [remark("not among them, since the scenario has no name for it:")] : []), ...others.map((line) => remark("  " + line))
        ].join("\n") + "\n";
    }

    /** What the sliders say, on top of what the run tries already. */
    function trial() {
        const practices = new Map(Object.entries(data.tried.practices));
        const sites = new Map(Object.entries(data.tried.sites));
        const closed = new Set(data.tried.closed);
        const others = [];
        data.levers.forEach((lever, l) => {
            const way = Number(choice.it.ways[l].toFixed(4));
            const isKnown = lever.kind !== "group" || data.contributors[lever.of[0].contributor].isGroup;
            if (way > 0 && !isKnown) {
                others.push(lever.label + ": " + (choice.it.closed[l] ? "closed" : Number((1 - way).toFixed(4)) + " of its mercury"));
            } else if (way > 0 && lever.kind === "practice") {
                practices.set(lever.label, way);
            } else if (way > 0 && choice.it.closed[l]) {
                closed.add(lever.label);
            } else if (way > 0) {
                sites.set(lever.label, Number(((sites.has(lever.label) ? sites.get(lever.label) : 1) * (1 - way)).toPrecision(12)));
            }
        });
        return { practices, sites, closed: [...closed], others };
    }

    function entriesOf(key, entries, quoted) {
        return entries.size ? ["  " + key + ":", ...[...entries].map(([name, value]) => "    " + quoted(name) + ": " + value)] : [];
    }

    /** A scenario's text without its section "tried", which is written anew. */
    function withoutTrial(text) {
        return text.replace(/^tried[ \t]*:.*(?:\r?\n(?:[ \t#].*)?(?=\r?\n|$))*/m, "").replace(/\s+$/, "");
    }

    function save() {
        download("tried.yaml", "application/yaml", saved());
    }

    function copy() {
        choice.change("ways", {});
        const told = document.getElementById("copied");
        const done = () => { told.textContent = say("page.whatif.copied"); };
        const not = () => { told.textContent = say("page.whatif.inBar"); };
        if (navigator.clipboard) {
            navigator.clipboard.writeText(location.href).then(done, not);
        } else {
            not();
        }
    }

    function kilogramsKept() {
        return data.contributors.reduce((sum, c, k) => sum + c.kilograms * (1 - choice.it.moved.factors[k]), 0);
    }

    /** Places that were above, for certain or perhaps, and whose high estimate is now under the guideline; and their reverse. */
    function passing() {
        const was = choice.shownBefore();
        const is = choice.shown();
        const g = choice.guideline();
        return data.places.filter((place) => totals.atPlace(place, is) < answering.NOT_ASSESSED
            && was.high[place.reach] >= g.value && is.high[place.reach] < g.value);
    }

    function effect() {
        const holder = document.getElementById("effect");
        if (!holder) {
            return;
        }
        const all = data.contributors.reduce((sum, c) => sum + c.kilograms, 0);
        const before = totals.ofRiver(choice.shownBefore());
        const now = totals.ofRiver(choice.shown());
        const passed = passing();
        holder.replaceChildren(
            make("p", "kept", make("b", null, say("page.whatif.kg", figure(kilogramsKept(), 3))), " " + say("page.whatif.keptOut", figure(all, 3))),
            make("table", "small", make("caption", null, say("page.whatif.river")),
                make("thead", null, make("tr", null, ...["page.answer", "page.before", "page.now"].map((key) => make("th", { scope: "col" }, say(key))))),
                make("tbody", null, ...[0, 1, 2, 3].map((a) => make("tr", null, make("th", { scope: "row" }, answerWords(a)), make("td", "number", kilometers(before[a])),
                    make("td", "number" + (Math.abs(before[a] - now[a]) > 0.5 ? " changed" : ""), kilometers(now[a])))))),
            make("p", null, passed.length ? say("page.whatif.passed", passed.map((p) => p.name).join(", ")) : say("page.whatif.nonePassed")));
    }

    let speaking = 0;
    function speak() {
        clearTimeout(speaking);
        speaking = setTimeout(() => {
            const now = totals.ofRiver(choice.shown());
            document.getElementById("said").textContent = say("page.said", figure(kilogramsKept(), 3), kilometers(now[0]), kilometers(now[1]), kilometers(now[2]), kilometers(now[3]));
        }, 700);
    }

    function draw(what) {
        if (what === "ways") {
            sliders.forEach((_, l) => show(l));
        }
        effect();
        speak();
    }

    return { build, draw, saved };
})();

/** Gives the reader a file. */
function download(name, type, text) {
    const link = make("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}
