// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The card: what is known of the picked reach or place, by the chosen value and flow state.

const card = (function () {
    const element = document.getElementById("card");

    function draw() {
        const picked = choice.it.picked;
        const parts = !picked ? [make("h3", null, say("page.card.none")), make("p", "hint", say("page.card.how"))]
            : picked.group !== undefined ? ofGroup(data.contributors[data.groups[picked.group].contributor])
            : picked.place !== undefined ? ofPlace(data.places[picked.place]) : ofReach(picked.reach);
        element.replaceChildren(...parts.filter((part) => part));
    }

    function head(title, what) {
        return make("div", "card-head", make("h3", null, title),
            button(say("page.card.close"), () => choice.change("picked", { picked: null }), { class: "quiet" }), make("p", "kind", what));
    }

    function ofPlace(place) {
        const people = place.people === null ? "" : say("page.card.people", figure(place.people, 6));
        const on = place.reach !== null && place.reach >= 0;
        return [head(place.name, [place.uses, people].filter((t) => t).join(", ")),
            place.people !== null && place.peopleSource ? make("p", "hint", say("page.card.people.source", place.peopleSource)) : null,
            ...(on ? body(place.reach, totals.atPlace(place, choice.shown()) === answering.NONE) : [make("p", null, say("page.card.noReach"))])];
    }

    function ofReach(i) {
        return [head(network.label(i), say("page.card.reach", network.kind(i), kilometers(network.length(i)))), ...body(i, false)];
    }

    /** A group of sites: how many they are and what they release, never where each is. */
    function ofGroup(c) {
        const all = data.contributors.reduce((sum, each) => sum + each.kilograms, 0);
        const now = c.kilograms * choice.it.moved.factors[data.contributors.indexOf(c)];
        return [head(c.name, say("page.card.group.count", figure(c.sites, 6))), make("p", null, sentence(say("sheet.area"))), make("dl", null,
            fact(say("page.kilograms"), figure(c.kilograms, 3)), fact(say("page.card.group.share"), percent(all > 0 ? c.kilograms / all : 0)),
            choice.isMoved() ? fact(say("page.kilograms.now"), figure(now, 3)) : ""), make("p", "hint", say("sheet.areas.note"))];
    }

    function body(i, isElsewhere) {
        const shown = choice.shown();
        const g = choice.guideline();
        const answer = isElsewhere ? answering.NONE : shown.answer[i];
        const parts = [verdict(shown, i, answer)];
        if (answer < answering.NOT_ASSESSED) {
            parts.push(values(shown, g, i), notes(shown, i));
            if (choice.isMoved()) {
                const old = choice.shownBefore();
                parts.push(make("p", "hint", say("page.card.before", amounts(old, g, i), answerWords(old.answer[i]))));
            }
            parts.push(shares(g, i));
        }
        parts.push(byState(g, i, isElsewhere), steps(i));
        return parts;
    }

    function verdict(shown, i, answer) {
        const shade = answer === answering.NONE ? data.shades.findIndex((s) => s.key === "does-not-apply") : shown.shade[i];
        const why = answer === answering.NOT_ASSESSED && shown.reason[i] >= 0 ? data.reasons[shown.reason[i]].words : "";
        return make("p", "verdict", legend.swatchOf(shade), make("b", null, answerWords(answer)), why ? make("span", "why", why) : null);
    }

    /** Values in the unit that the guideline is printed in. */
    function amounts(shown, g, i) {
        return range(shown.low[i] * g.perSi, shown.high[i] * g.perSi, 2) + " " + unit(g.unit);
    }

    function values(shown, g, i) {
        return make("dl", null,
            fact(say("page.card.estimate"), amounts(shown, g, i)),
            fact(say("page.card.guide"), unit(g.printed)),
            fact(say("page.card.ratio"), say("page.card.times", range(shown.low[i] / g.value, shown.high[i] / g.value, 2))));
    }

    function fact(term, text) {
        return make("div", null, make("dt", null, term), make("dd", null, text));
    }

    function notes(shown, i) {
        const all = ["hatched", "nearBank", "fromBackground"].filter((mark) => shown[mark][i]).map((mark) => make("p", "hint", say("page.legend." + mark)));
        return all.length ? make("div", null, ...all) : null;
    }

    /** What each site or group adds to the high estimate, as bars. */
    function shares(g, i) {
        const states = answering.statesOf(g, choice.it.state);
        if (g.measure < 0 || !g.linear || !data.contributors.length) {
            return g.linear ? null : make("p", "hint", say("page.card.noShares", g.reason || ""));
        }
        const found = states.map((s) => ({ s, parts: model.parts(g.measure, s, choice.it.moved, i) })).filter((f) => f.parts);
        if (!found.length) {
            return make("p", "hint", say("page.card.background"));
        }
        const worst = found.reduce((a, b) => (b.parts.total > a.parts.total ? b : a));
        const { total, rest, added } = worst.parts;
        const byName = new Map();
        added.forEach((value, k) => byName.set(data.contributors[k].name, (byName.get(data.contributors[k].name) || 0) + value));
        const rows = [...byName].filter(([, value]) => value / total >= 0.0005).sort((a, b) => b[1] - a[1]);
        const bars = [...rows, [say("page.card.rest"), rest]].map(([name, value]) => make("li", null,
            make("span", "share-name", name), make("span", "share-bar", bar(value / total)), make("span", "share-part", percent(value / total))));
        return make("div", "shares", make("h4", null, say(isPublic ? "page.card.groups" : "page.card.sites")),
            make("p", "hint", g.isOneForAllStates ? say("page.card.shares.one") : say("page.card.shares.state", data.states[worst.s].name)), make("ul", null, ...bars));
    }

    function bar(part) {
        const inner = make("i");
        inner.style.width = (100 * Math.max(0, Math.min(1, part))).toFixed(2) + "%";
        return inner;
    }

    /** The answer in each flow state. */
    function byState(g, i, isElsewhere) {
        if (g.isOneForAllStates || isElsewhere || data.states.length < 2 || g.measure < 0) {
            return null;
        }
        const rows = data.states.map((state, s) => {
            const shown = choice.now(choice.it.guideline, s);
            const has = shown.answer[i] < answering.NOT_ASSESSED;
            return make("tr", null, make("th", { scope: "row" }, stateWords(s)), make("td", null, has ? amounts(shown, g, i) : ""),
                make("td", null, answerWords(shown.answer[i])));
        });
        return make("table", "small", make("caption", null, say("page.card.states")),
            make("thead", null, make("tr", null, ...["page.state", "page.card.estimate", "page.answer"].map((key) => make("th", { scope: "col" }, say(key))))),
            make("tbody", null, ...rows));
    }

    /** Up and down the river by button, which is also the way by keyboard. */
    function steps(i) {
        if (i >= data.reaches.drawn) {
            return null;
        }
        const go = (reach) => () => choice.change("picked", { picked: { reach } });
        const up = network.above(i).slice().sort((a, b) => network.order(b) - network.order(a));
        return make("p", "buttons",
            button(say("page.card.zoom"), () => zoomTo(i)),
            ...up.slice(0, 3).map((a) => button(say("page.card.up", network.label(a)), go(a))),
            network.below(i) >= 0 ? button(say("page.card.down", network.label(network.below(i))), go(network.below(i))) : null);
    }

    let zoomTo = () => {};
    return { draw, amounts, start: (zoom) => { zoomTo = zoom; } };
})();

function answerWords(answer) {
    return answer === answering.NONE ? say("page.answer.none") : say("answer." + answering.KEYS[answer]);
}

/** A flow state with its part of the year. */
function stateWords(s) {
    return say("page.state.of", data.states[s].name, percent(data.states[s].share));
}
