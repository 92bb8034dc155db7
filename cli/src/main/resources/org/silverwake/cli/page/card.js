// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The card: what was picked on the map or in a list, and what can be done about it.

const card = (function () {
    const element = document.getElementById("card");
    let picked = null;
    let go;

    /** Shows a reach, a point or a defect; null shows how to begin. */
    function show(what) {
        picked = what;
        draw();
    }

    function draw() {
        const parts = picked === null ? nothing()
            : picked.point ? ofPoint(picked.point)
                : picked.defect ? ofDefect(picked.defect) : ofReach(picked.reach);
        element.replaceChildren(...parts.filter((part) => part));
    }

    function nothing() {
        return [make("h2", null, say("card.begin")), make("p", null, say("card.how"))];
    }

    function head(title, what) {
        return make("div", "card-head", make("h2", null, title),
            button(say("card.close"), () => go(null), { class: "quiet" }), make("p", "kind", what));
    }

    function facts(pairs) {
        return make("dl", null, ...pairs.filter((pair) => pair[1]).map(([term, text, look]) =>
            make("div", look || null, make("dt", null, term), make("dd", null, text))));
    }

    function buttons(...all) {
        return make("p", "buttons", ...all);
    }

    function zoom(what) {
        return button(say("card.zoom"), () => go(what, true));
    }

    function undo(entry) {
        return button(entry.applied ? say("corrections.drop") : say("corrections.undo"), () => corrections.undo(entry));
    }

    // points

    function ofPoint(point) {
        const given = point.given;
        const { now, table, entry, settled } = points.state(point);
        const hit = point.hit;
        const far = points.isFar(point);
        return [
            head(given.name, say("kind." + given.kind) + (given.uses ? " (" + given.uses + ")" : "")),
            far ? make("p", "alarm", hit ? say("point.far", { distance: meters(hit.distance), most: meters(given.most) }) : say("point.nowhere")) : null,
            far && settled && given.reason ? make("p", "reason", given.reason) : null,
            !hit && !entry && given.reason ? make("p", "reason", given.reason) : null,
            facts([
                [say("point.on"), hit && !far ? network.label(hit.reach) : ""],
                [say("point.nearest"), hit && far ? network.label(hit.reach) : ""],
                [say("point.distance"), hit ? say("point.distance.of", { distance: meters(hit.distance), most: meters(given.most) }) : "", "live"],
                [say("point.river"), given.river || ""],
                [say("point.now"), now.lon === undefined ? "" : position(now.lon, now.lat)],
                [say("point.table"), entry && table.lon !== undefined ? position(table.lon, table.lat) : ""],
                [say("point.where"), given.where]
            ]),
            make("p", "hint", say("point.drag")),
            now.lon === undefined ? null : coordinates(point, now),
            buttons(now.lon === undefined ? null : zoom({ point }),
                far ? button(say("point.bring"), () => bring(point)) : null, entry ? undo(entry) : null)
        ];
    }

    function coordinates(point, now) {
        const field = (name, value) => make("input", { type: "text", inputmode: "decimal", name, value: value.toFixed(6), size: 11 });
        const lon = field("lon", wrapped(now.lon));
        const lat = field("lat", now.lat);
        const wrong = make("span", { class: "wrong", role: "alert" });
        const form = make("form", {
            class: "coordinates",
            submit: (event) => {
                event.preventDefault();
                const x = Number(lon.value.replace(",", "."));
                const y = Number(lat.value.replace(",", "."));
                if (lon.value.trim() !== "" && lat.value.trim() !== "" && Math.abs(x) <= 180 && Math.abs(y) <= 90) {
                    points.move(point, x, y);
                    go({ point }, true);
                } else {
                    wrong.textContent = say("point.wrong");
                }
            }
        }, make("label", null, say("point.longitude"), lon), make("label", null, say("point.latitude"), lat),
        make("button", { type: "submit" }, say("point.move")), wrong);
        return make("details", null, make("summary", null, say("point.type")), form);
    }

    let bring = () => {};

    // reaches

    function ofReach(i) {
        const line = network.lineOf(i);
        const turn = turning.entryOf(i);
        const outlet = corrections.find((e) => e.action === "outlet" && e.feature === network.feature(i));
        const free = turning.freeEnd(i);
        const about = data.defects.filter((d) => d.features.includes(network.feature(i))).slice(0, 6);
        return [
            head(network.label(i), say("kind.reach")),
            facts([
                [say("reach.feature"), network.feature(i)],
                [say("reach.length"), meters(network.length(i))],
                [say("reach.direction"), say(network.isAgainst(i) !== turning.isTurned(i) ? "reach.against" : "reach.drawn")],
                [say("reach.ends"), network.isOutlet(i) && data.assembled && !turn ? say("reach.isOutlet") : ""]
            ]),
            turn ? make("p", "done", say("reach.turned")) : null,
            outlet ? make("p", "done", say("reach.chosenOutlet")) : null,
            buttons(zoom({ reach: i }),
                button(say(turn ? "reach.turnBack" : "reach.turn"), () => turning.turn([i])),
                line.length > 1 ? button(say("reach.turnLine", { n: line.length, feature: network.feature(i) }), () => turning.turn(line)) : null,
                outlet ? undo(outlet) : free ? button(say("reach.outlet"), () => turning.outlet(i)) : null),
            !free && !outlet ? make("p", "hint", say("reach.notFree")) : null,
            about.length ? make("h3", null, say("reach.defects")) : null,
            ...about.map((d) => button(say("defect.short", { n: data.defects.indexOf(d) + 1, words: d.words }), () => go({ defect: d }, true), { class: "link" }))
        ];
    }

    // defects

    function ofDefect(defect) {
        const entry = decisions.of(defect);
        const number = data.defects.indexOf(defect) + 1;
        return [
            head(say("defect.short", { n: number, words: defect.words }), say(defect.repaired ? "defect.repaired" : "defect.open")),
            make("p", null, defect.text + "."),
            make("p", "remedy", make("b", null, say(defect.repaired ? "defect.done" : "defect.todo") + " "), defect.remedy + "."),
            defect.lon === undefined ? make("p", "hint", say("defect.nowhere")) : null,
            entry ? make("p", "done", say("defect.said", { words: decisions.words(entry) })) : null,
            buttons(defect.lon === undefined ? null : zoom({ defect }),
                ...decisions.choices(defect).filter((c) => !entry || c.action !== entry.action)
                    .map((c) => button(c.words, () => decisions.put(defect, c.action))),
                entry ? undo(entry) : null),
            defect.features.length ? buttons(...defect.features.slice(0, 6).map((feature) => {
                const reaches = network.ofFeature(feature);
                return reaches.length ? button(say("defect.feature", { feature }), () => go({ reach: reaches[0] }, true), { class: "link" }) : null;
            })) : null
        ];
    }

    return {
        show, draw,
        picked: () => picked,
        start: (goTo, bringHere) => {
            go = goTo;
            bring = bringHere;
            show(null);
        }
    };
})();

/** Turned reaches and chosen outlets. */
const turning = (function () {
    function entryOf(i) {
        return corrections.find((e) => e.action === "turn" && !e.applied && e.reaches.includes(i));
    }

    /** Turns reaches of one line, all of them or one; turned ones turn back. */
    function turn(reaches) {
        const all = reaches.length > 1 || network.lineOf(reaches[0]).length === 1;
        const before = new Set(network.lineOf(reaches[0]).filter((i) => entryOf(i)));
        const back = all ? before.size === reaches.length : before.has(reaches[0]);
        [...new Set([...before].map(entryOf))].forEach((e) => corrections.undo(e));
        const after = all ? (back ? [] : reaches) : [...before].filter((i) => i !== reaches[0]).concat(back ? [] : reaches);
        const line = network.lineOf(reaches[0]);
        if (after.length === line.length) {
            const [enters, leaves] = corrections.ends(line);
            put(line, leaves, enters);
        } else {
            after.forEach((i) => put([i], network.end(i), network.start(i)));
        }
    }

    function put(reaches, enters, leaves) {
        corrections.put({
            action: "turn", kind: "", name: "", feature: network.feature(reaches[0]), lon: enters.lon, lat: enters.lat,
            wasLon: leaves.lon, wasLat: leaves.lat, defect: "", reaches
        });
    }

    /** The end of a reach that touches no other, by preference the one where water leaves. */
    function freeEnd(i) {
        if (network.endIsFree(i)) {
            return network.end(i);
        }
        return network.startIsFree(i) ? network.start(i) : null;
    }

    function outlet(i) {
        const end = freeEnd(i);
        corrections.put({ action: "outlet", kind: "", name: "", feature: network.feature(i), lon: end.lon, lat: end.lat, defect: "" });
    }

    return { entryOf, turn, freeEnd, outlet, isTurned: (i) => !!entryOf(i) };
})();
