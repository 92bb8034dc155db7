// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// What the person corrects: a list of entries, saved as corrections.csv and read back from it.
// An entry is one row of that file. Earlier ones, which this check already heeded, come with the data and can be dropped.

const corrections = (function () {
    const COLUMNS = ["action", "kind", "name", "feature", "longitude", "latitude",
        "was_longitude", "was_latitude", "defect", "note"];
    const DECIMALS = 7;
    const NEAR = 10; // places nearer than this are the same [m], as the reader of the file has it

    const entries = data.applied.map((row) => Object.assign({ applied: true, dropped: false }, row)); // "acts": it was heeded
    const listeners = [];
    let saved = rows().join("\n");

    function changed() {
        listeners.forEach((listener) => listener());
    }

    /** What an entry is about; there is one row for one thing. */
    function key(e) {
        if (e.action === "move") {
            return ["move", e.kind, e.name].join("\t");
        }
        if (e.action === "outlet") {
            return ["outlet", e.feature].join("\t");
        }
        return e.action === "turn"
            ? ["turn", e.feature, ...stretch(e)].join("\t")
            : ["repair", e.defect, e.feature, e.lon === undefined ? "" : e.lon.toFixed(4), e.lat === undefined ? "" : e.lat.toFixed(4)].join("\t");
    }

    /** The two ends of a turned stretch, in an order that does not depend on the direction. */
    function stretch(e) {
        const ends = [[e.lon, e.lat], [e.wasLon, e.wasLat]]
            .map((end) => end.map((d) => (d === undefined ? "" : d.toFixed(4))).join(" "));
        return ends.sort();
    }

    /** Puts an entry in the place of what there is about the same thing. */
    function put(entry) {
        take(entry, false);
        entries.push(Object.assign({ applied: false, dropped: false, note: "" }, entry));
        changed();
    }

    /** Takes a new entry back, or marks an earlier one as dropped. */
    function take(entry, heard) {
        for (const e of entries.filter((one) => key(one) === key(entry))) {
            if (e.applied) {
                e.dropped = true;
            } else {
                entries.splice(entries.indexOf(e), 1);
            }
        }
        if (heard !== false) {
            changed();
        }
    }

    /** Undoes the last word on a thing: a new entry goes and an earlier one comes back; an earlier one alone is dropped. */
    function undo(entry) {
        if (entry.applied) {
            entry.dropped = true;
        } else {
            entries.splice(entries.indexOf(entry), 1);
            entries.filter((e) => e.applied && key(e) === key(entry)).forEach((e) => { e.dropped = false; });
        }
        changed();
    }

    function keep(entry) {
        take(entry, false);
        entry.dropped = false;
        changed();
    }

    /** An entry that is in force: a new one, or an earlier one that was heeded and is not dropped. */
    function find(test) {
        return entries.find((e) => !e.dropped && (!e.applied || e.acts) && test(e));
    }

    function number(value) {
        return value === undefined || value === null || value === "" ? "" : Number(value).toFixed(DECIMALS);
    }

    function longitude(value) {
        return value === undefined || value === null || value === "" ? "" : number(wrapped(Number(value)));
    }

    /** A cell of the file, in quotes where it needs them. A name is written as it is: the file is read by the program alone. */
    function cell(text) {
        const value = String(text === undefined || text === null ? "" : text);
        return /[",\r\n]|^[=+\-@\t ]|[ \t]$/.test(value) && !/^-?\d+\.\d+$/.test(value)
            ? '"' + value.replace(/"/g, '""') + '"' : value;
    }

    function rows() {
        return entries.filter((e) => !e.dropped).map((e) => [
            e.action, e.kind, e.name, e.feature, longitude(e.lon), number(e.lat),
            longitude(e.wasLon), number(e.wasLat), e.defect, e.note].map(cell).join(","));
    }

    function csv() {
        return [COLUMNS.join(","), ...rows()].join("\r\n") + "\r\n";
    }

    /** What parts the fields: a spreadsheet where decimals have commas saves semicolons, as the program reads them too. */
    function separator(text) {
        const heading = text.split(/[\r\n]/, 1)[0];
        return heading.split(";").length > heading.split(",").length ? ";" : ",";
    }

    /** Records of a CSV text: fields in quotes may hold separators, quotes and line ends (RFC 4180). */
    function records(text, separator) {
        const all = [];
        let record = [];
        let field = "";
        let quoted = false;
        const source = text.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n");
        for (let k = 0; k <= source.length; k++) {
            const c = source[k];
            if (quoted && c !== undefined) {
                if (c === '"' && source[k + 1] === '"') {
                    field += '"';
                    k++;
                } else if (c === '"') {
                    quoted = false;
                } else {
                    field += c;
                }
            } else if (c === '"' && field === "") {
                quoted = true;
            } else if (c === separator || c === "\n" || c === undefined) {
                record.push(field);
                field = "";
                if (c !== separator) {
                    if (record.length > 1 || record[0] !== "") {
                        all.push(record);
                    }
                    record = [];
                }
            } else {
                field += c;
            }
        }
        return all;
    }

    /** Reads a file that was saved before; gives a line in words for each row that has nothing to act on here. */
    function load(text) {
        const parted = separator(text);
        const [head, ...lines] = records(text, parted);
        if (!head || COLUMNS.some((column) => !head.includes(column))) {
            return { read: 0, problems: [say("load.header", { columns: COLUMNS.join(",") })] };
        }
        const problems = [];
        let read = 0;
        lines.forEach((line, k) => {
            const row = entry(Object.fromEntries(head.map((column, c) => [column, line[c] || ""])), parted === ";");
            const problem = fit(row);
            if (problem) {
                problems.push(say("load.row", { row: k + 2, problem }));
            } else {
                read++;
                admit(row);
            }
        });
        changed();
        return { read, problems };
    }

    /** A row that this check already heeded stays as it is; any other is new. */
    function admit(row) {
        const same = entries.find((e) => e.applied && key(e) === key(row) && e.action === row.action
            && number(e.lon) === number(row.lon) && number(e.lat) === number(row.lat));
        take(row, false);
        if (same) {
            same.dropped = false;
        } else {
            entries.push(Object.assign(row, { applied: false, dropped: false }));
        }
    }

    function entry(row, decimalCommas) {
        const degrees = (text) => (text.trim() === "" ? undefined : Number(decimalCommas ? text.replace(",", ".") : text));
        return {
            action: row.action, kind: row.kind, name: row.name, feature: row.feature,
            lon: degrees(row.longitude), lat: degrees(row.latitude),
            wasLon: degrees(row.was_longitude), wasLat: degrees(row.was_latitude),
            defect: row.defect, note: row.note
        };
    }

    function fit(row) {
        if ([row.lon, row.lat, row.wasLon, row.wasLat].some((d) => d !== undefined && !Number.isFinite(d))) {
            return say("load.number");
        }
        switch (row.action) {
            case "move":
                return data.points.some((p) => p.kind === row.kind && p.name === row.name) && row.lon !== undefined && row.lat !== undefined
                    ? "" : say("load.point", { kind: row.kind, name: row.name });
            case "turn":
                row.reaches = turnedReaches(row);
                return row.reaches.length ? "" : say("load.stretch", { feature: row.feature });
            case "outlet":
                return network.ofFeature(row.feature).length ? "" : say("load.feature", { feature: row.feature });
            case "accept":
            case "refuse":
                return data.defects.some((d) => isAbout(row, d)) ? "" : say("load.defect", { defect: row.defect });
            default:
                return say("load.action", { action: row.action });
        }
    }

    /** Whether an accepted or refused row is about a defect. */
    function isAbout(e, defect) {
        return e.defect === defect.kind && e.feature === defect.features.join("|")
            && (e.lon === undefined || defect.lon === undefined
                || network.distance(e.lon, e.lat, defect.lon, defect.lat) <= NEAR);
    }

    /** Which reaches a row of a turned stretch is about: one of the feature's, or a whole line of it. */
    function turnedReaches(e) {
        const reaches = network.ofFeature(e.feature);
        const near = (place, lon, lat) => lon !== undefined && network.distance(place.lon, place.lat, lon, lat) <= NEAR;
        const one = reaches.find((i) => joins(network.start(i), network.end(i)));
        if (one !== undefined) {
            return [one];
        }
        const lines = [...new Set(reaches.map((i) => network.lineOf(i)))];
        return lines.find((line) => {
            const [from, to] = ends(line);
            return joins(from, to) || (e.wasLon === undefined && (near(from, e.lon, e.lat) || near(to, e.lon, e.lat)));
        }) || [];

        function joins(from, to) {
            return (near(from, e.lon, e.lat) && near(to, e.wasLon, e.wasLat))
                || (near(to, e.lon, e.lat) && near(from, e.wasLon, e.wasLat));
        }
    }

    /** The two ends of a drawn line: where water enters by the direction of its first reach, and where it leaves. */
    function ends(line) {
        const first = line[0];
        const last = line[line.length - 1];
        const drawn = !network.isAgainst(first);
        const head = drawn ? network.start(first) : network.end(first);
        const tail = network.isAgainst(last) ? network.start(last) : network.end(last);
        return drawn ? [head, tail] : [tail, head];
    }

    return {
        entries, put, undo, keep, find, csv, load, isAbout, turnedReaches, ends,
        listen: (listener) => listeners.push(listener),
        isSaved: () => rows().join("\n") === saved,
        markSaved: () => { saved = rows().join("\n"); changed(); }
    };
})();
