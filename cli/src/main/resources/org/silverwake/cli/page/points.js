// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Points: a mark where each was given, its place on the river, and the line between them. Marks can be dragged.

const points = (function () {
    const SNAP = "#b02a37";
    let map;
    let pane;
    let onPick;
    const shown = data.points.map((given) => ({ given }));

    /** Where a point stands now, and where it was given before anything was corrected. */
    function state(point) {
        const given = point.given;
        const entry = moved(given);
        const earlier = corrections.entries.find((e) => e.applied && e.acts && isOf(e, given));
        const table = earlier && earlier.wasLon !== undefined
            ? { lon: earlier.wasLon, lat: earlier.wasLat } : { lon: given.lon, lat: given.lat };
        const now = entry ? { lon: entry.lon, lat: entry.lat } : table;
        const settled = now.lon !== undefined && isSame(now, given);
        return { entry, table, now, settled };
    }

    function isSame(a, b) {
        return Math.abs(a.lon - b.lon) < 1e-6 && Math.abs(a.lat - b.lat) < 1e-6;
    }

    function isOf(e, given) {
        return e.action === "move" && e.kind === given.kind && e.name === given.name;
    }

    function moved(given) {
        return corrections.find((e) => isOf(e, given));
    }

    /** The place on the river for a position: as the program found it, or as found here after a move. */
    function snap(point, at, settled) {
        const given = point.given;
        if (settled && given.snapLon !== undefined) {
            return { reach: given.reach, lon: given.snapLon, lat: given.snapLat, distance: given.distance };
        }
        return at.lon === undefined ? null : network.nearest(at.lon, at.lat);
    }

    function symbol(point) {
        return symbolOf(point.given.mark);
    }

    function icon(point) {
        return L.divIcon({
            className: "point",
            iconSize: [24, 24],
            html: make("span", null, symbol(point), make("span", "name", point.given.name))
        });
    }

    function show(point) {
        const { now, settled, table, entry } = state(point);
        if (now.lon === undefined) {
            hide(point);
            return;
        }
        const at = [now.lat, network.toward(now.lon)];
        if (!point.marker) {
            point.marker = L.marker(at, { icon: icon(point), draggable: true, autoPan: true, riseOnHover: true, title: "", alt: label(point) });
            point.marker.on("drag", () => drag(point));
            point.marker.on("dragend", () => drop(point));
            point.marker.on("click", () => onPick(point));
            point.marker.on("keypress", (event) => event.originalEvent.key === "Enter" && onPick(point));
            point.line = L.polyline([], { renderer: pane, color: SNAP, weight: 2, dashArray: "5 4", interactive: false });
            point.foot = L.circleMarker(at, { renderer: pane, radius: 4, weight: 1.5, color: "#ffffff", fillColor: SNAP, fillOpacity: 1, interactive: false });
            point.ghost = L.polyline([], { renderer: pane, color: "#1c1c1c", weight: 1.2, dashArray: "1 4", interactive: false });
            point.old = L.circleMarker(at, { renderer: pane, radius: 5, weight: 1.2, color: "#1c1c1c", fill: false, dashArray: "2 2", interactive: false });
            point.marker.addTo(map);
            point.marker.getElement().setAttribute("aria-label", label(point));
        }
        point.marker.setLatLng(at);
        place(point, now, snap(point, now, settled));
        const wasElsewhere = entry && table.lon !== undefined && !isSame(table, now);
        attach(point.ghost, wasElsewhere);
        attach(point.old, wasElsewhere);
        if (wasElsewhere) {
            const old = [table.lat, network.toward(table.lon)];
            point.old.setLatLng(old);
            point.ghost.setLatLngs([old, at]);
        }
    }

    function label(point) {
        return say("kind." + point.given.kind) + " " + point.given.name;
    }

    /** Draws a point's line to the river; in a striking way if that is too far. */
    function place(point, now, hit) {
        point.hit = hit;
        const far = isFar(point);
        const element = point.marker.getElement();
        element.classList.toggle("lost", far);
        element.classList.toggle("moved", !!moved(point.given));
        attach(point.line, !!hit && !far);
        attach(point.foot, !!hit && !far);
        if (hit) {
            point.foot.setLatLng([hit.lat, hit.lon]);
            point.line.setLatLngs([[now.lat, network.toward(now.lon)], [hit.lat, hit.lon]]);
        }
    }

    function attach(layer, wanted) {
        if (wanted && !map.hasLayer(layer)) {
            layer.addTo(map);
        } else if (!wanted && map.hasLayer(layer)) {
            layer.remove();
        }
    }

    function hide(point) {
        ["marker", "line", "foot", "ghost", "old"].forEach((part) => point[part] && point[part].remove());
        point.marker = null;
        point.hit = null;
    }

    /** Whether a point is too far from the river to be carried there. */
    function isFar(point) {
        return !point.hit || point.hit.distance > point.given.most;
    }

    function drag(point) {
        const at = point.marker.getLatLng();
        const now = { lon: at.lng, lat: at.lat };
        place(point, now, network.nearest(now.lon, now.lat));
        onPick(point, true);
    }

    function drop(point) {
        const at = point.marker.getLatLng();
        move(point, at.lng, at.lat);
    }

    function move(point, lon, lat) {
        const { table } = state(point);
        corrections.put({
            action: "move", kind: point.given.kind, name: point.given.name, feature: "",
            lon: Number(wrapped(lon).toFixed(7)), lat: Number(lat.toFixed(7)), wasLon: table.lon, wasLat: table.lat, defect: ""
        });
    }

    return {
        shown, state, label, symbol, isFar, move,
        start: function (theMap, pick) {
            map = theMap;
            onPick = pick;
            pane = L.svg({ padding: 0.5 });
            shown.forEach(show);
        },
        refresh: () => shown.forEach(show),
        isMoved: (point) => !!moved(point.given)
    };
})();
