// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// What frames the page: who made it, cautions, choices, warnings, assumptions and the record of the run.

const frame = (function () {
    const at = (id) => document.getElementById(id);
    const numbered = (prefix) => Array.from({ length: 20 }, (_, k) => prefix + "." + (k + 1)).filter((key) => key in texts[language].words);

    function draw() {
        document.documentElement.lang = language;
        document.title = data.meta.title;
        at("skip").textContent = say("page.skip");
        at("band").textContent = isPublic ? "" : say("not-for-posting");
        at("band").hidden = isPublic;
        head();
        cautions();
        choices();
        about();
        at("map").setAttribute("aria-label", say("page.map"));
        at("live-title").textContent = say("page.explore");
    }

    function head() {
        const m = data.meta;
        at("head").replaceChildren(make("div", "title", make("h1", null, m.title), make("p", null, [say("made.by", m.preparedBy), say("made.on", day(m.date)),
            say("made.use-until", day(said.useUntil))].join(". ") + "."), list("made.to-do", said.whatToDo), list("made.ask", said.whomToAsk),
        make("p", { class: "draft", hidden: !!texts[language].reviewed }, say("draft"))), languages());
    }

    /** What the office wrote on what to do, or on whom to ask. */
    function list(key, all) {
        return all.length ? make("p", "told", make("b", null, say(key) + ": "), all.map((text) => (/[.!?]$/.test(text) ? text : text + ".")).join(" ")) : null;
    }

    function languages() {
        const select = make("select", { id: "language", change: () => { language = select.value; choice.change("view", {}); at("language").focus(); } },
            ...Object.entries(texts).map(([code, t]) => make("option", { value: code, lang: code, selected: code === language }, t.words["language.name"])));
        return make("p", "screen choose", make("label", { for: "language" }, say("page.language")), select);
    }

    /** All of them, always: those that every map has, then those of this run. */
    function cautions() {
        const own = data.cautions.filter((text) => !said.always.includes(text));
        at("cautions").replaceChildren(make("h2", null, say("caution.heading")), make("ul", null, ...numbered("caution").map((key) => make("li", null, say(key))),
            ...own.map((text) => make("li", { lang: "en" }, text))));
    }

    function choices() {
        const guideline = make("select", { id: "guideline", change: () => choice.change("view", { guideline: Number(guideline.value) }) }, ...groups());
        const state = make("select", { id: "state", change: () => choice.change("view", { state: Number(state.value) }) },
            make("option", { value: -1, selected: choice.it.state < 0 }, say("page.state.all")),
            ...data.states.map((_, s) => make("option", { value: s, selected: s === choice.it.state }, stateWords(s))));
        state.disabled = choice.guideline().isOneForAllStates;
        at("choices").replaceChildren(make("p", "choose", make("label", { for: "guideline" }, say("page.guideline")), guideline),
            make("p", "choose", make("label", { for: "state" }, say("page.state")), state), make("p", "hint", behind(choice.guideline())));
    }

    function groups() {
        return [...new Set(data.guidelines.map((g) => g.medium))].map((medium) => make("optgroup", { label: guidelineMedium(medium) },
            ...data.guidelines.map((g, k) => [g, k]).filter(([g]) => g.medium === medium).map(([g, k]) =>
                make("option", { value: k, selected: k === choice.it.guideline }, g.printed ? g.name + " \u2013 " + unit(g.printed) + ", " + g.protects : g.name))));
    }

    function guidelineMedium(medium) {
        const key = "medium." + medium.replace(" ", "-");
        return key in texts[language].words ? say(key) : medium;
    }

    function behind(g) {
        return [g.observable, g.averagingWords, g.source, g.checked, g.reason].filter((t) => t).map(sentence).join(" ");
    }

    function about() {
        const r = data.record;
        const folded = (title, all, open) => (all.length ? make("details", { class: "about", open }, make("summary", null, make("h3", null, title), make("span", "count", String(all.length))),
            make("ul", null, ...all.map((text) => make("li", null, text)))) : null);
        const settings = (r.settings || []).map((s) => s.key + " = " + figure(s.value, 4) + " " + unit(s.unit || "-") + (s.given ? "" : " (" + s.source + ")"));
        at("about").replaceChildren(...[make("h2", null, say("page.about")), folded(say("page.warnings"), data.warnings, true), folded(say("page.assumptions"), data.assumptions, true),
            data.leftOutTexts ? make("p", "hint", say("page.leftOut", data.leftOutTexts)) : null, folded(say("page.settings"), settings, false),
            make("details", { class: "about" }, make("summary", null, make("h3", null, say("page.record"))), make("dl", null,
                ...[["page.record.version", data.meta.version], ["page.record.reaches", figure(r.reaches, 7)], ["page.record.cells", figure(r.cells, 7)], ["page.record.crs", r.coordinateSystem],
                    ["page.record.closure", figure(r.closure, 2)], ["page.record.halving", figure(r.changeOnHalving, 2)]].map(([key, text]) => make("div", null, make("dt", null, say(key)), make("dd", null, text)))),
            make("ul", "hashes", ...r.inputs.map((f) => make("li", null, f.role + ": " + f.file + " ", make("code", null, f.sha256)))))].filter((p) => p));
    }

    return { draw, choices };
})();
