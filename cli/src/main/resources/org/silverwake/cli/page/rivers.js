// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Draws the reaches in view on Leaflet's canvas: widths by stream order, turned reaches, outlets.

const Rivers = Lines.extend({
    _width: function (i) {
        const below = this.highest - network.order(i);
        const crowd = this.crowded ? 0.75 : 1.6;
        return Math.max(crowd, (this.crowded ? 3.2 : 4.2) - 0.8 * below);
    },

    _draw: function (ctx) {
        this.scale = 256 * Math.pow(2, this._map.getZoom());
        this.origin = this._map.getPixelOrigin();
        const visible = this._inView();
        this.crowded = visible.length > this.CROWDED;
        ctx.lineCap = ctx.lineJoin = "round";
        this._strokes(ctx, this.chosen, this.CHOSEN, () => 11);
        this._strokes(ctx, visible.filter((i) => !this.turned[i]), this.WATER, (i) => this._width(i));
        this._strokes(ctx, visible.filter((i) => this.turned[i]), this.TURNED, (i) => this._width(i) + 1);
        this._outlets(ctx, visible);
        this._arrows(ctx, visible);
        this._names(ctx, visible);
        this.drawn = visible.length;
        if (visible.length && this.options.onFirst) {
            this.options.onFirst(visible.length);
            this.options.onFirst = null;
        }
    },

    _arrows: function (ctx, visible) {
        const taken = new Set();
        const least = this.crowded ? Math.max(1, this.highest - 3) : 1;
        ctx.lineWidth = 2;
        ctx.strokeStyle = "#ffffff";
        for (let v = visible.length - 1; v >= 0; v--) {
            const i = visible[v];
            if (network.order(i) >= least) {
                this._arrowsOn(ctx, i, taken);
            }
        }
    },

    /** A bar across the end of each reach from which no water goes on. */
    _outlets: function (ctx, visible) {
        ctx.lineWidth = 4;
        ctx.strokeStyle = "#1c1c1c";
        for (const i of visible) {
            if (!network.isOutlet(i) || !data.assembled) {
                continue;
            }
            const path = this._pixels(i);
            const end = path[path.length - 1];
            const before = this._pointAlong(path, end.along - 6);
            const angle = Math.atan2(end.y - before.y, end.x - before.x);
            ctx.beginPath();
            ctx.moveTo(end.x - 9 * Math.sin(angle), end.y + 9 * Math.cos(angle));
            ctx.lineTo(end.x + 9 * Math.sin(angle), end.y - 9 * Math.cos(angle));
            ctx.stroke();
        }
    }
});
