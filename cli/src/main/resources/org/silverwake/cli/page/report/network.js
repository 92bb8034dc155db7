// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// The network of the report: lines, names, what lies above and below a reach.

const network = (function () {
    const r = data.reaches;
    const shape = geometry(r.points, r.size, Math.round(1 / r.degree));
    const count = r.count;
    const above = Array.from({ length: count }, () => []);
    const order = new Uint8Array(count).fill(1);
    const length = Float64Array.from(r.meters);
    const upstream = Float64Array.from(r.meters); // length of the longest way to a head [m]
    for (let i = 0; i < count; i++) { // downstream order: what is above i is done
        const orders = above[i].map((a) => order[a]).sort((a, b) => b - a);
        if (orders.length) {
            order[i] = orders[0] + (orders[1] === orders[0] ? 1 : 0);
            upstream[i] += Math.max(...above[i].map((a) => upstream[a]));
        }
        if (r.below[i] >= 0) {
            above[r.below[i]].push(i);
        }
    }

    function name(i) {
        return r.name[i] < 0 ? "" : r.names[r.name[i]];
    }

    /** The way through a reach from its farthest head to the end of the river. */
    function way(i) {
        const path = [i];
        while (above[path[0]].length) {
            path.unshift(above[path[0]].reduce((a, b) => (upstream[b] > upstream[a] ? b : a)));
        }
        while (r.below[path[path.length - 1]] >= 0) {
            path.push(r.below[path[path.length - 1]]);
        }
        return path;
    }

    return Object.assign(shape, {
        count, name, way, above: (i) => above[i],
        below: (i) => r.below[i],
        id: (i) => r.id[i],
        label: (i) => (name(i) ? say("page.reach.named", name(i), r.id[i]) : r.id[i]),
        length: (i) => length[i],
        order: (i) => order[i],
        kind: (i) => r.kinds[r.kind[i]],
        longest: () => upstream.indexOf(upstream.reduce((a, b) => Math.max(a, b), 0))
    });
})();

/** Whether a reach or a place is picked, not nothing and not the area of a group. */
function isOnRiver(picked) {
    return !!picked && picked.group === undefined;
}

/** The reach with a line at what is picked: that of a place that has none of its own is the nearest. */
function drawnReach(picked) {
    if (picked.reach !== undefined) {
        return picked.reach;
    }
    const place = data.places[picked.place];
    if (place.reach !== null && place.reach >= 0 && place.reach < data.reaches.drawn) {
        return place.reach;
    }
    const near = network.nearest(place.lon, place.lat);
    return near ? near.reach : network.longest();
}
