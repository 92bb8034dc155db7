// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Defects: numbered marks on the map, drawn on a canvas since there may be thousands.

const Defects = L.Path.extend({
    COLOR: "#a3154f",
    MANY: 250, // above this many in view, marks are dots without numbers

    initialize: function (options) {
        L.Util.setOptions(this, options);
        this.placed = data.defects.map((defect, k) => ({ defect, number: k + 1 })).filter((d) => d.defect.lon !== undefined);
        this.chosen = null;
    },

    _project: function () {},

    _update: function () {
        this._pxBounds = this._renderer._bounds;
    },

    _at: function (defect) {
        return this._map.latLngToLayerPoint([defect.lat, network.toward(defect.lon)]);
    },

    _updatePath: function () {
        if (!this._renderer._drawing) {
            return;
        }
        const ctx = this._renderer._ctx;
        const view = this._renderer._bounds;
        const visible = this.placed.map((d) => ({ d, at: this._at(d.defect) })).filter((m) => view.contains(m.at));
        this.numbered = visible.length <= this.MANY;
        ctx.textAlign = "center";
        ctx.textBaseline = "middle";
        ctx.font = "bold 11px " + getComputedStyle(document.body).fontFamily;
        for (let k = visible.length - 1; k >= 0; k--) {
            this._mark(ctx, visible[k].d, visible[k].at);
        }
        ctx.textAlign = "start";
    },

    _mark: function (ctx, d, at) {
        const chosen = d.defect === this.chosen;
        const settled = !!decisions.of(d.defect);
        const text = String(d.number);
        const half = this.numbered || chosen ? Math.max(9, 4 + 3.6 * text.length) : 3.5;
        const high = this.numbered || chosen ? 9 : 3.5;
        ctx.beginPath();
        ctx.moveTo(at.x - half + high, at.y - high);
        ctx.arc(at.x + half - high, at.y, high, -Math.PI / 2, Math.PI / 2);
        ctx.arc(at.x - half + high, at.y, high, Math.PI / 2, 3 * Math.PI / 2);
        ctx.closePath();
        ctx.fillStyle = chosen ? this.COLOR : settled ? "#ece8e0" : "#ffffff";
        ctx.fill();
        ctx.strokeStyle = settled ? "#7c7c7c" : this.COLOR;
        ctx.lineWidth = d.defect.repaired ? 1.3 : 2.4;
        ctx.stroke();
        if (this.numbered || chosen) {
            ctx.fillStyle = chosen ? "#ffffff" : settled ? "#5c5c5c" : this.COLOR;
            ctx.fillText(text, at.x, at.y + 0.5);
        }
    },

    /** The defect whose mark is under a point of the layer, if there is one. */
    markAt: function (point) {
        let best = null;
        let least = this.numbered ? 11 : 6;
        for (const d of this.placed) {
            const distance = this._at(d.defect).distanceTo(point);
            if (distance < least) {
                least = distance;
                best = d.defect;
            }
        }
        return best;
    },

    _containsPoint: function (point) {
        return this.markAt(point) !== null;
    },

    choose: function (defect) {
        this.chosen = defect;
        this.redraw();
    }
});

/** What the person said to defects. */
const decisions = {
    of: (defect) => corrections.find((e) => (e.action === "accept" || e.action === "refuse") && corrections.isAbout(e, defect)),

    /** What can be said: the words of a button for each action that does something. */
    choices: function (defect) {
        if (defect.kind === "roughness-out-of-range") {
            return [];
        }
        if (defect.repaired) {
            const accept = { action: "accept", words: say("defect.accept") };
            return defect.refusable ? [accept, { action: "refuse", words: say("defect.refuse") }] : [accept];
        }
        return defect.kind === "gap"
            ? [{ action: "accept", words: say("defect.join") }, { action: "refuse", words: say("defect.leave") }]
            : [{ action: "accept", words: say("defect.seen") }];
    },

    put: (defect, action) => corrections.put({
        action, kind: "", name: "", feature: defect.features.join("|"), lon: defect.lon, lat: defect.lat, defect: defect.kind
    }),

    /** The end of an entry in words. */
    words: function (entry) {
        const defect = data.defects.find((d) => corrections.isAbout(entry, d));
        const choice = defect && decisions.choices(defect).find((c) => c.action === entry.action);
        return choice ? choice.words : say("defect." + entry.action);
    }
};
