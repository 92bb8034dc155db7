// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The lists beside the map: what to look at first, then everything that was read, and the corrections made.

const lists = (function () {
    const STEP = 60;
    const root = document.getElementById("lists");
    const open = { problems: true, lost: true, corrections: true, defects: true, points: true, warnings: true };
    let go;
    let save;

    function draw() {
        const places = root.scrollTop;
        root.replaceChildren(...[
            search, section("problems", data.problems.length, problems),
            section("lost", lost().length, () => pointItems(lost())),
            section("corrections", corrections.entries.length, entries, true),
            section("defects", data.defects.length, defects, true),
            section("points", data.points.length, () => pointItems(points.shown)),
            section("warnings", data.warnings.length, () => data.warnings.map((text) => make("p", "item", text))),
            section("outlets", outlets.length, () => more("outlets", outlets, (i) =>
                button(network.label(i), () => go({ reach: i }, true), { class: "item" }))),
            key, about
        ].filter((part) => part));
        root.scrollTop = places;
    }

    function section(name, count, content, always) {
        if (!count && !always) {
            return null;
        }
        const details = make("details", { id: "list-" + name, open: open[name] === true },
            make("summary", null, make("h2", null, say("list." + name)), make("span", "count", String(count))));
        details.addEventListener("toggle", () => { open[name] = details.open; });
        details.append(...content().filter((part) => part));
        return details;
    }

    /** So many items, and a button for more. */
    const lengths = {};
    function more(name, all, item) {
        const shown = all.slice(0, lengths[name] || STEP).map(item);
        if (all.length > shown.length) {
            shown.push(button(say("list.more", { n: all.length - shown.length }), () => {
                lengths[name] = (lengths[name] || STEP) + 5 * STEP;
                draw();
            }, { class: "quiet" }));
        }
        return shown;
    }

    function problems() {
        return [make("p", "hint", say("problems.hint")), ...data.problems.map((text) => make("p", "item alarm", text))];
    }

    // points

    function lost() {
        return points.shown.filter((point) => points.isFar(point));
    }

    function pointItems(all) {
        return more("points", all, (point) => make("button", {
            type: "button", class: "item" + (points.isFar(point) ? " lost" : ""), click: () => go({ point }, true)
        }, points.symbol(point), make("span", null, make("b", null, point.given.name), make("small", null, pointWords(point)))));
    }

    function pointWords(point) {
        const hit = point.hit;
        const values = hit ? { distance: meters(hit.distance), reach: network.label(hit.reach), most: meters(point.given.most) } : {};
        const words = !hit ? say("points.nowhere") : say(points.isFar(point) ? "points.far" : "points.near", values);
        return (points.isMoved(point) ? say("points.moved") + " " : "") + words;
    }

    // defects

    const kinds = [...new Set(data.defects.map((d) => d.kind))];

    function defects() {
        if (!data.defects.length) {
            return [make("p", "hint", say("defects.none"))];
        }
        return kinds.map((kind) => {
            const all = data.defects.filter((d) => d.kind === kind);
            const name = "defects-" + kind;
            const group = make("details", { class: "group", open: open[name] === undefined ? data.defects.length <= 30 : open[name] },
                make("summary", null, all[0].words, make("span", "count", String(all.length))),
                ...more(name, all, defectItem));
            group.addEventListener("toggle", () => { open[name] = group.open; });
            return group;
        });
    }

    function defectItem(defect) {
        const said = decisions.of(defect);
        return make("button", { type: "button", class: "item" + (said ? " settled" : ""), click: () => go({ defect }, true) },
            make("span", "number" + (defect.repaired ? "" : " open"), String(data.defects.indexOf(defect) + 1)),
            make("span", null, make("b", null, defect.text),
                make("small", null, say(defect.repaired ? "defect.done" : "defect.todo") + " " + defect.remedy
                    + (said ? ". " + say("defect.said", { words: decisions.words(said) }) : ""))));
    }

    // corrections

    function entries() {
        const unsaved = !corrections.isSaved();
        const file = make("input", { type: "file", accept: ".csv,text/csv", id: "load", class: "unseen", change: load });
        return [
            corrections.entries.length ? null : make("p", "hint", say("corrections.none")),
            ...corrections.entries.map(entryItem),
            unsaved ? make("p", "hint", say("corrections.unsaved")) : null,
            make("p", "buttons", button(say("corrections.save"), save, { class: unsaved ? "main" : "", id: "save" }),
                make("label", { class: "button", for: "load" }, say("corrections.load")), file),
            loaded,
            make("p", "hint", say("corrections.then"))
        ];
    }

    const loaded = make("div", { role: "status" });

    function load(event) {
        const file = event.target.files[0];
        if (!file) {
            return;
        }
        file.text().then((text) => {
            const { read, problems: bad } = corrections.load(text);
            loaded.replaceChildren(make("p", "done", say("load.read", { n: read })), ...bad.map((line) => make("p", "alarm", line)));
        });
    }

    function entryItem(entry) {
        const target = targetOf(entry);
        return make("div", "entry" + (entry.dropped ? " dropped" : ""),
            target ? button(entryWords(entry), () => go(target, true), { class: "link" }) : make("span", null, entryWords(entry)),
            make("small", entry.applied && !entry.acts ? "idle" : null,
                entry.dropped ? say("corrections.dropped") : entry.applied ? entry.became : say("corrections.new")),
            entry.applied && entry.dropped ? button(say("corrections.keep"), () => corrections.keep(entry))
                : button(say(entry.applied ? "corrections.drop" : "corrections.undo"), () => corrections.undo(entry)));
    }

    function targetOf(entry) {
        if (entry.action === "move") {
            const point = points.shown.find((p) => p.given.kind === entry.kind && p.given.name === entry.name);
            return point ? { point } : null;
        }
        if (entry.action === "turn" || entry.action === "outlet") {
            const reaches = entry.reaches || network.ofFeature(entry.feature);
            return reaches.length ? { reach: reaches[0] } : null;
        }
        const defect = data.defects.find((d) => corrections.isAbout(entry, d));
        return defect ? { defect } : null;
    }

    function entryWords(entry) {
        switch (entry.action) {
            case "move":
                return say("entry.move", { kind: say("kind." + entry.kind), name: entry.name, position: position(entry.lon, entry.lat) });
            case "turn":
                return say("entry.turn", { reach: entry.reaches && entry.reaches.length === 1 ? network.label(entry.reaches[0]) : entry.feature });
            case "outlet":
                return say("entry.outlet", { feature: entry.feature });
            default:
                return say("entry.repair", { defect: entry.defect.replace(/-/g, " "), features: entry.feature.split("|").join(", "), words: decisions.words(entry) });
        }
    }

    // searching

    const MOST_FOUND = 12;
    const results = make("div", { class: "results", id: "results" });
    const field = make("input", { type: "search", id: "search", autocomplete: "off", placeholder: say("search.hint"), "aria-controls": "results", input: find });
    const search = make("form", {
        role: "search",
        submit: (event) => {
            event.preventDefault();
            const first = results.querySelector("button");
            if (first) {
                first.click();
            }
        }
    }, make("label", { for: "search" }, say("search")), field, results);

    function find() {
        const word = plain(field.value.trim());
        const found = word ? [...foundPoints(word), ...foundReaches(word)] : [];
        const none = word && !found.length ? [make("p", "hint", say("search.none"))] : [];
        results.replaceChildren(...found.slice(0, MOST_FOUND).map(([text, target]) =>
            button(text, () => go(target, true), { class: "item" })), ...none,
        ...(found.length > MOST_FOUND ? [make("p", "hint", say("search.more", { n: found.length - MOST_FOUND }))] : []));
    }

    function foundPoints(word) {
        return points.shown.filter((p) => plain(p.given.name).includes(word)).map((point) => [points.label(point), { point }]);
    }

    /** Reaches whose id begins with the word come first, then rivers by name, the longest reach of each, then the rest. */
    function foundReaches(word) {
        const begin = [];
        const within = [];
        const rivers = new Map();
        for (let i = 0; i < network.count; i++) {
            const id = plain(network.id(i));
            if (id.startsWith(word)) {
                begin.push(i);
            } else if (id.includes(word)) {
                within.push(i);
            } else if (plain(network.name(i)).includes(word)
                && (!rivers.has(network.name(i)) || network.length(i) > network.length(rivers.get(network.name(i))))) {
                rivers.set(network.name(i), i);
            }
        }
        begin.sort((a, b) => network.id(a).length - network.id(b).length);
        return [...begin, ...rivers.values(), ...within].map((i) => [say("search.reach", { reach: network.label(i) }), { reach: i }]);
    }

    // what is not a list

    const outlets = data.assembled ? Array.from({ length: network.count }, (_, i) => i).filter(network.isOutlet)
        .sort((a, b) => network.order(b) - network.order(a)) : [];

    const key = (function () {
        const row = (picture, text) => make("p", null, picture, make("span", null, text));
        const drawn = (svg) => {
            const holder = make("span", "symbol");
            holder.innerHTML = '<svg viewBox="0 0 24 24" aria-hidden="true">' + svg + "</svg>";
            return holder;
        };
        const marks = [...new Map(points.shown.map((p) => [p.given.mark, p])).values()];
        return make("details", { id: "list-key", class: "key" }, make("summary", null, make("h2", null, say("list.key"))),
            row(drawn('<path d="M2 12H22" class="river"/><path d="M18 12 9 17 11 12 9 7Z" class="water"/>'), say("key.flow")),
            row(drawn('<path d="M2 12H20" class="river"/><path d="M20 4V20" class="bar"/>'), say("key.outlet")),
            row(drawn('<path d="M4 5 19 19" class="snap"/><circle cx="19" cy="19" r="4" class="foot"/>'), say("key.snap")),
            row(drawn('<circle cx="12" cy="12" r="9" class="ring"/>'), say("key.lost")),
            row(make("span", "number open", "1"), say("key.open")),
            row(make("span", "number", "2"), say("key.repaired")),
            ...marks.map((p) => row(points.symbol(p), say("mark." + p.given.mark))));
    })();

    const about = make("footer", null, make("h2", null, say("about.cautions")), ...data.cautions.map((text) => make("p", null, text)),
        make("p", "hint", say("about.made", { version: data.version, preparedBy: data.preparedBy, date: data.date })));

    return {
        draw,
        start: (goTo, saveFile) => {
            go = goTo;
            save = saveFile;
            draw();
        }
    };
})();
