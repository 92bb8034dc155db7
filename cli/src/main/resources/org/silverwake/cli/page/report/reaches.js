// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Draws the reaches in view by their class, as on printed maps: color, width and dash; marks along them; arrows; names.

const Reaches = Lines.extend({
    ARROW: "#1c1c1c",
    ARROW_GAP: 260,
    ARROW_CELL: 70,
    ARROW_MOST: 6.5,
    INK: "#1c1c1c",
    PAPER: "#ffffff",
    OUTLINE: 2,

    /** Widths shrink where many reaches are in view. */
    _factor: function (visible) {
        return visible > 6000 ? 0.35 : visible > this.CROWDED ? 0.5 : visible > 600 ? 0.75 : 1;
    },

    _width: function (i) {
        return data.shades[this.shown.shade[i]].width * this.factor;
    },

    _draw: function (ctx) {
        this.scale = 256 * Math.pow(2, this._map.getZoom());
        this.origin = this._map.getPixelOrigin();
        this.shown = choice.shown();
        const visible = this._inView();
        this.factor = this._factor(visible.length);
        this.crowded = visible.length > this.CROWDED;
        ctx.lineJoin = "round";
        ctx.lineCap = "round";
        this._strokes(ctx, this.chosen, this.CHOSEN, (i) => this._width(i) + 11);
        const byShade = data.shades.map(() => []);
        visible.forEach((i) => byShade[this.shown.shade[i]].push(i));
        for (let k = byShade.length - 1; k >= 0; k--) {
            this._class(ctx, byShade[k], data.shades[k]);
        }
        ctx.setLineDash([]);
        if (!this.crowded) {
            visible.filter((i) => this.shown.hatched[i]).forEach((i) => this._hatch(ctx, i));
            visible.filter((i) => this.shown.nearBank[i]).forEach((i) => this._dots(ctx, i));
            visible.filter((i) => this.shown.fromBackground[i]).forEach((i) => this._diamonds(ctx, i));
        }
        this._arrows(ctx, visible);
        this._names(ctx, visible);
        if (this.pointer) {
            this._pointer(ctx);
        }
        if (visible.length && this.options.onFirst) {
            this.options.onFirst(visible.length);
            this.options.onFirst = null;
        }
    },

    /** One class: a white edge, under dashes a thin unbroken line, then the line itself. */
    _class: function (ctx, reaches, look) {
        const width = look.width * this.factor;
        const dotted = look.dash.length && look.dash[0] < 0.5 * look.width;
        ctx.setLineDash([]);
        ctx.lineCap = "butt";
        if (!this.crowded) {
            this._strokes(ctx, reaches, this.PAPER, () => width + this.OUTLINE);
        }
        if (look.dash.length && !dotted) {
            this._strokes(ctx, reaches, look.color, () => width * 0.3);
        }
        ctx.lineCap = look.dash.length && !dotted ? "butt" : "round";
        ctx.setLineDash(look.dash);
        this._strokes(ctx, reaches, look.color, () => width);
    },

    /** Calls draw(x, y, angle) along a reach's line. */
    _along: function (i, gap, draw) {
        const path = this._pixels(i);
        const length = path[path.length - 1].along;
        for (let at = gap / 2; at < length; at += gap) {
            const a = this._pointAlong(path, Math.max(0, at - 2));
            const b = this._pointAlong(path, Math.min(length, at + 2));
            draw((a.x + b.x) / 2, (a.y + b.y) / 2, Math.atan2(b.y - a.y, b.x - a.x));
        }
    },

    _hatch: function (ctx, i) {
        const r = this._width(i) / 2 + 3;
        ctx.strokeStyle = this.INK;
        ctx.lineWidth = 0.9;
        ctx.beginPath();
        this._along(i, 8, (x, y, angle) => {
            const t = angle + Math.PI / 3;
            ctx.moveTo(x - r * Math.cos(t), y - r * Math.sin(t));
            ctx.lineTo(x + r * Math.cos(t), y + r * Math.sin(t));
        });
        ctx.stroke();
    },

    _dots: function (ctx, i) {
        const aside = this._width(i) / 2 + 3.2;
        ctx.fillStyle = this.INK;
        ctx.beginPath();
        this._along(i, 4.5, (x, y, angle) => {
            const u = x - aside * Math.sin(angle);
            const v = y + aside * Math.cos(angle);
            ctx.moveTo(u + 1, v);
            ctx.arc(u, v, 1, 0, 2 * Math.PI);
        });
        ctx.fill();
    },

    _diamonds: function (ctx, i) {
        ctx.fillStyle = this.PAPER;
        ctx.strokeStyle = this.INK;
        ctx.lineWidth = 1;
        ctx.beginPath();
        this._along(i, 24, (x, y) => {
            ctx.moveTo(x, y - 4.5);
            ctx.lineTo(x + 4.5, y);
            ctx.lineTo(x, y + 4.5);
            ctx.lineTo(x - 4.5, y);
            ctx.closePath();
        });
        ctx.fill();
        ctx.stroke();
    },

    _arrows: function (ctx, visible) {
        const taken = new Set();
        const least = this.crowded ? Math.max(1, this.highest - 3) : 1;
        ctx.lineWidth = 2;
        ctx.strokeStyle = this.PAPER;
        for (let v = visible.length - 1; v >= 0; v--) {
            if (network.order(visible[v]) >= least) {
                this._arrowsOn(ctx, visible[v], taken);
            }
        }
    },

    /** The place that the profile points at. */
    _pointer: function (ctx) {
        const path = this._pixels(this.pointer.reach);
        const at = this._pointAlong(path, path[path.length - 1].along * this.pointer.part);
        ctx.beginPath();
        ctx.arc(at.x, at.y, 9, 0, 2 * Math.PI);
        ctx.lineWidth = 5;
        ctx.strokeStyle = this.PAPER;
        ctx.stroke();
        ctx.lineWidth = 2.5;
        ctx.strokeStyle = this.INK;
        ctx.stroke();
    },

    point: function (reach, part) {
        this.pointer = reach < 0 ? null : { reach, part };
        this.redraw();
    }
});
