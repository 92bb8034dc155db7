// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// What pages share that draw reaches on Leaflet's canvas: lines in view, arrows downstream, names, what lies under a click.
// A page's own layer extends this one with _draw and _width.

const Lines = L.Path.extend({
    WATER: "#2d4a73",
    ARROW: "#2d4a73",
    TURNED: "#9a3c0c",
    CHOSEN: "rgba(234, 143, 76, 0.75)",
    ARROW_CELL: 46, // at most one arrow in a square of this many pixels
    ARROW_GAP: 130,
    ARROW_MOST: 9,
    CROWDED: 2500,
    MOST_NAMES: 120,

    initialize: function (options) {
        L.Util.setOptions(this, options);
        this.turned = new Uint8Array(network.count);
        this.chosen = [];
        this.drawn = 0;
        const n = network.lon.length;
        this.x = new Float64Array(n);
        this.y = new Float64Array(n);
        for (let k = 0; k < n; k++) {
            this.x[k] = (network.lon[k] + 180) / 360;
            this.y[k] = this._north(network.lat[k]);
        }
        this.byOrder = Array.from({ length: network.count }, (_, i) => i).sort((a, b) => network.order(a) - network.order(b));
        this.highest = network.count ? network.order(this.byOrder[network.count - 1]) : 1;
    },

    /** Web Mercator's y, 0 at the top to 1 at the bottom. */
    _north: function (latitude) {
        const s = Math.sin(Math.max(-85, Math.min(85, latitude)) * Math.PI / 180);
        return 0.5 - Math.log((1 + s) / (1 - s)) / (4 * Math.PI);
    },

    _project: function () {},

    _update: function () {
        this._pxBounds = this._renderer._bounds;
    },

    _updatePath: function () {
        if (this._renderer._drawing) {
            this._draw(this._renderer._ctx);
        }
    },

    _inView: function () {
        const box = this._renderer._bounds;
        const from = this._map.layerPointToLatLng(L.point(box.min.x, box.max.y));
        const to = this._map.layerPointToLatLng(L.point(box.max.x, box.min.y));
        return this.byOrder.filter((i) => network.east[i] >= from.lng && network.west[i] <= to.lng
            && network.north[i] >= from.lat && network.south[i] <= to.lat);
    },

    /** Strokes reaches, those of one width together, so that the canvas is asked seldom. */
    _strokes: function (ctx, reaches, color, width) {
        ctx.strokeStyle = color;
        let open = 0;
        for (const i of reaches) {
            const w = width(i);
            if (w !== open) {
                if (open) {
                    ctx.stroke();
                }
                ctx.beginPath();
                ctx.lineWidth = open = w;
            }
            this._trace(ctx, i);
        }
        if (open) {
            ctx.stroke();
        }
    },

    /** A reach's line without points that fall into the pixel of the last one. */
    _trace: function (ctx, i) {
        const last = network.first[i + 1] - 1;
        let k = network.first[i];
        let x = this.x[k] * this.scale - this.origin.x;
        let y = this.y[k] * this.scale - this.origin.y;
        ctx.moveTo(x, y);
        for (k++; k <= last; k++) {
            const u = this.x[k] * this.scale - this.origin.x;
            const v = this.y[k] * this.scale - this.origin.y;
            if (k === last || Math.abs(u - x) + Math.abs(v - y) > 1) {
                ctx.lineTo(u, v);
                x = u;
                y = v;
            }
        }
    },

    /** A reach's points in pixels of the layer, downstream, with the length up to each. */
    _pixels: function (i) {
        const path = [];
        let along = 0;
        for (let k = network.first[i]; k < network.first[i + 1]; k++) {
            const x = this.x[k] * this.scale - this.origin.x;
            const y = this.y[k] * this.scale - this.origin.y;
            const before = path[path.length - 1];
            along += before ? Math.hypot(x - before.x, y - before.y) : 0;
            path.push({ x, y, along });
        }
        if (this.turned[i]) {
            path.reverse();
            path.forEach((p) => { p.along = along - p.along; });
        }
        return path;
    },

    _pointAlong: function (path, along) {
        let k = 1;
        while (k < path.length - 1 && path[k].along < along) {
            k++;
        }
        const a = path[k - 1];
        const b = path[k];
        const t = b.along > a.along ? Math.max(0, Math.min(1, (along - a.along) / (b.along - a.along))) : 0;
        return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
    },

    _arrowsOn: function (ctx, i, taken) {
        const path = this._pixels(i);
        const length = path[path.length - 1].along;
        const size = this.turned[i] ? 11 : Math.min(this.ARROW_MOST, 5 + this._width(i));
        if (length < (network.order(i) > 1 ? 5 : 14)) {
            return;
        }
        const arrows = Math.max(1, Math.floor(length / this.ARROW_GAP));
        for (let a = 0; a < arrows; a++) {
            const along = length * (a + 0.5) / arrows;
            const at = this._pointAlong(path, along);
            const cell = Math.floor((at.x + this.origin.x) / this.ARROW_CELL) + " "
                + Math.floor((at.y + this.origin.y) / this.ARROW_CELL);
            if (!this._renderer._bounds.contains([at.x, at.y]) || taken.has(cell)) {
                continue;
            }
            taken.add(cell);
            const back = this._pointAlong(path, along - size);
            const ahead = this._pointAlong(path, along + size);
            this._arrow(ctx, at, Math.atan2(ahead.y - back.y, ahead.x - back.x), size, this.turned[i] ? this.TURNED : this.ARROW);
        }
    },

    _arrow: function (ctx, at, angle, size, color) {
        const c = Math.cos(angle) * size;
        const s = Math.sin(angle) * size;
        ctx.beginPath();
        ctx.moveTo(at.x + c, at.y + s);
        ctx.lineTo(at.x - 0.75 * c - 0.72 * s, at.y - 0.75 * s + 0.72 * c);
        ctx.lineTo(at.x - 0.35 * c, at.y - 0.35 * s);
        ctx.lineTo(at.x - 0.75 * c + 0.72 * s, at.y - 0.75 * s - 0.72 * c);
        ctx.closePath();
        ctx.fillStyle = color;
        ctx.stroke();
        ctx.fill();
    },

    /** Each river's name once, beside the middle of its longest reach in view, where there is room. */
    _names: function (ctx, visible) {
        const longest = new Map();
        for (const i of visible) {
            const name = network.name(i);
            if (name && (!longest.has(name) || network.length(i) > network.length(longest.get(name)))) {
                longest.set(name, i);
            }
        }
        ctx.font = "italic 13px " + getComputedStyle(document.body).fontFamily;
        ctx.textBaseline = "middle";
        ctx.lineWidth = 4;
        ctx.strokeStyle = "rgba(250, 248, 243, 0.9)";
        ctx.fillStyle = this.WATER;
        const boxes = [...labels.boxes];
        const view = L.bounds(this._map.containerPointToLayerPoint([0, 0]), this._map.containerPointToLayerPoint(this._map.getSize()));
        const byOrder = [...longest].sort((a, b) => network.order(b[1]) - network.order(a[1]) || network.length(b[1]) - network.length(a[1]));
        for (const [name, i] of byOrder.slice(0, this.MOST_NAMES)) {
            const path = this._pixels(i);
            const at = this._pointAlong(path, path[path.length - 1].along / 2);
            const width = ctx.measureText(name).width;
            const box = [[8, -17], [8, 3], [-8 - width, -17], [-8 - width, 3]]
                .map(([dx, dy]) => labels.box(at.x + dx, at.y + dy, width, 15))
                .find((spot) => view.contains([spot.x, spot.y]) && view.contains([spot.x + spot.w, spot.y + spot.h]) && labels.isFree(spot, boxes));
            if (box) {
                boxes.push(box);
                ctx.strokeText(name, box.x, box.y + 8);
                ctx.fillText(name, box.x, box.y + 8);
            }
        }
    },

    /** The reach under a point of the layer, within some pixels; -1 where there is none. */
    reachAt: function (point) {
        const at = this._map.layerPointToLatLng(point);
        const near = network.nearest(at.lng, at.lat);
        if (!near) {
            return -1;
        }
        const hit = this._map.latLngToLayerPoint([near.lat, near.lon]);
        return hit.distanceTo(point) <= (L.Browser.mobile ? 16 : 9) ? near.reach : -1;
    },

    _containsPoint: function (point) {
        return this.reachAt(point) >= 0;
    },

    choose: function (reaches) {
        this.chosen = reaches;
        this.redraw();
    }
});
