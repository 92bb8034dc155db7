// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.silverwake.cli.laboratory.Category;
import org.silverwake.cli.laboratory.Headings;
import org.silverwake.cli.laboratory.Vocabulary;
import org.silverwake.geo.crs.Datums;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;
import org.silverwake.model.quantity.Dimension;

/** The reference page of scenario keys and table columns, made from the tables that the reader itself uses. */
final class ReferencePage {
    private static final String INTRODUCTION = """
            # Scenario

            <!-- Generated from the program's own key tables; do not edit. DEVELOPERS.md says how to write it anew. -->

            A scenario is a folder with `scenario.yaml` (YAML 1.2, UTF-8) and the files it names, relative to that folder.
            Every physical value carries its unit, as in `18 mg/L`; decimals are written with a point. A dot in a key stands for
            one step of nesting, so `channel.manning-n` is written

            ```yaml
            channel:
              manning-n: 0.035
            ```

            `*` stands for a name of your choice (a flow state, a particle class) or for each item of a list. All problems of
            a scenario are reported together, with file and line.

            """;

    private static final String TABLES = """
            ## Tables

            CSV with comma or semicolon; with semicolons, decimals may be written with a comma. UTF-8, else Windows-1252.
            A number that could be read in two ways, such as `1.234` beside decimal commas, is refused. Column names are read
            without regard to case; blanks and hyphens count as `_`. Blank lines are skipped, and columns that begin with `note`
            are free. A unit stands in the cell (`12 kg/yr`) or in the column `..._unit`.

            """;

    private static final String POSITION = """
            ### Position

            Every table says where its rows lie in one of three ways: `longitude` and `latitude`; `easting` and `northing` with
            the UTM `zone`; or `x` and `y` in the river layer's own system. The same keys, with hyphens, stand in
            `rivers.outlets` and `sites.more`.

            Degrees are read as `-56.78342`, `56.78342 W`, `56°47'00.3"W`, `W 56 47 00.3`, `56:47:00.3 W`, `56d47m00.3s W`,
            `56°47.005'W`, with typographic marks too. East may be E, L or a word (este, leste, est), west W, O or a word
            (oeste, ouest); a bare O is west. Longitude comes first. A sign and a letter that contradict each other, or a letter
            of the other coordinate, are refused. A decimal comma is read where it can be nothing else: in tables with decimal
            commas always, in others with three digits or more behind it; `4,30` beside decimal points could be 4.30 degrees or 4
            degrees 30 minutes and is refused. `12.345` beside decimal commas is refused like any such number.

            In eastings and northings thousands separators are read where one reading alone lies in the range (`623.456,7`).
            A zone needs its hemisphere: `21 south`, `21 north`, or `21` with `hemisphere`, or the letter of a latitude band
            (`21M`). `21S` could be the south or band S, which lies 32 to 40 north: the northing decides where it can, else
            it is refused with both latitudes. A zone may be left out where `datum` is the EPSG code of a projected system, whose
            easting and northing these then are.

            `datum` is a name of the table below or an EPSG code; WGS 84 if blank. Older national datums differ from WGS 84 by
            100 to 400 m. The shift is the one of best stated accuracy among those of the EPSG Dataset (v10.076) whose area, as a
            box, holds the place; a neighbor country may be among them. How far it moved a point, where to, and how far others
            would have moved it is told by `check` and `run`, by name where they part by more than they are good to. The code of a
            projected system takes the same shifts; on a layer of that very system, the layer's. Where none is known the
            point is refused. `unknown`, `UNKWN`, `other` and the like are taken as WGS 84 with a warning.

            `accuracy` is how far off the position may be, as the receiver showed it. Where another river lies that near, a
            warning gives both distances, unless the row names its river and lies on it.

            """;

    private static final String COLUMNS = "rivers.columns.";

    private ReferencePage() {}

    /** The page as Markdown. */
    static String text() {
        StringBuilder page = new StringBuilder(INTRODUCTION);
        keys(page);
        columns(page);
        settings(page);
        page.append(TABLES);
        positions(page);
        sites(page);
        places(page);
        samples(page);
        units(page);
        return page.toString();
    }

    private static void keys(StringBuilder page) {
        page.append("## Keys\n\n| key | takes | if absent | meaning |\n| --- | --- | --- | --- |\n");
        List<String> settings = SettingList.all().stream()
                .flatMap(setting -> Key.of(setting).stream())
                .map(Key::path)
                .toList();
        for (Key key : KeyTable.all()) {
            if (!settings.contains(key.path()) && !key.path().startsWith(COLUMNS)) {
                row(page, "`" + key.path() + "`", takes(key), key.fallback(), key.meaning());
            }
        }
        page.append('\n');
    }

    private static void columns(StringBuilder page) {
        page.append("## Columns of the river layer\n\n`rivers.columns` maps what the layer holds, each as"
                + " `NAME: {column: COLUMN, unit: UNIT, missing: VALUE}`; `missing` is one value or a list, and may be left out."
                + " Where the last column says so, one for each flow state will also do: `discharge: {dry: {column: Q1, unit:"
                + " m3/s}, wet: {...}}`.\n\n| name | unit | by flow state |\n| --- | --- | --- |\n");
        KeyTable.riverColumns()
                .forEach((name, dimension) -> row(
                        page,
                        "`" + name + "`",
                        name.equals("kind") ? "text" : dimension.accepted().replace("-,", "none,"),
                        KeyTable.BY_STATE.contains(name) ? "yes" : ""));
        page.append('\n');
    }

    private static void settings(StringBuilder page) {
        page.append(
                "## Settings\n\nSingle numbers, each with a default and its source. A setting without a default is an"
                        + " error where it acts and is not given. One with \"yes\" in the last column may differ by flow"
                        + " state and by kind of reach (`channel`, `still-water`, `wetland`, `canal`):\n\n"
                        + "```yaml\n"
                        + "mercury:\n"
                        + "  demethylation-rate: {value: 0.02 1/d, by-state: {dry: 0.05 1/d}, by-kind: {wetland: 0.01 1/d}}\n"
                        + "```\n\n"
                        + "A kind's number holds in reaches of that kind in every state, before the state's; `value` holds"
                        + " elsewhere and may be left out where there is a default. In the workbook these are rows of the"
                        + " last sheet, such as `mercury.demethylation-rate.by-state.dry`; the value then stands there too,"
                        + " as `mercury.demethylation-rate.value`.\n\n"
                        + "| setting | unit | low | default | high | source | acts on | may differ |\n"
                        + "| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (Setting setting : SettingList.all()) {
            row(
                    page,
                    "`" + setting.path() + "`",
                    setting.unit(),
                    Key.show(setting.low()),
                    setting.hasDefault() ? Key.show(setting.fallback()) : "",
                    Key.show(setting.high()),
                    setting.source(),
                    setting.acts(),
                    setting.varies() ? "yes" : "");
        }
        page.append('\n');
    }

    private static void positions(StringBuilder page) {
        page.append(POSITION).append("| column | takes | meaning |\n| --- | --- | --- |\n");
        for (Key key : PositionCells.KEYS) {
            row(page, "`" + key.path() + "`", takes(key), key.meaning());
        }
        page.append("\nDatums: ")
                .append(Datums.names().entrySet().stream()
                        .map(datum -> datum.getKey() + " (" + datum.getValue() + ")")
                        .collect(Collectors.joining(", ")))
                .append(".\n\n");
    }

    private static void sites(StringBuilder page) {
        page.append("### Sites\n\nExactly one of three ways: `release`; `tailings` with `content`; `effluent` with"
                + " `concentration`. `STATE` is a flow state, `CLASS` a particle class.\n\n"
                + "| column | takes | meaning |\n| --- | --- | --- |\n");
        for (Key key : SitesTable.KEYS) {
            row(page, "`" + key.path() + "`", takes(key), key.meaning());
        }
        page.append(
                "\nWithout `year_share_STATE` the rate is the same in every state. With share a of a state that holds p of"
                        + " the year, its rate is the year's mean rate times a/p, so that the year's mass stays as given.\n\n");
    }

    private static void places(StringBuilder page) {
        page.append(
                "### Places, gauges, abstractions\n\n| table | column | takes | meaning |\n| --- | --- | --- | --- |\n");
        PlaceTables.keys().forEach((table, keys) -> {
            for (Key key : keys) {
                row(page, table, "`" + key.path() + "`", takes(key), key.meaning());
            }
        });
        page.append('\n');
    }

    private static void samples(StringBuilder page) {
        page.append(
                "### Samples\n\nTables of laboratories: other columns may stand there and are not read; docs/how-to/samples.md"
                        + " says how to map a laboratory's own.\n\n| column | meaning | usual headings |\n| --- | --- | --- |\n");
        SampleColumns.described()
                .forEach((column, meaning) -> row(
                        page,
                        "`" + column + "`",
                        meaning,
                        String.join(", ", Headings.known().getOrDefault(column, List.of()))));
        page.append(
                "\nWords that are known without `samples.words`; case, accents, blanks, hyphens and full stops do not"
                        + " count.\n\n| column | meaning | words |\n| --- | --- | --- |\n");
        for (Category column : Category.values()) {
            Vocabulary.usual(column)
                    .forEach((meaning, words) ->
                            row(page, "`" + column.column() + "`", meaning, String.join("; ", words)));
        }
        page.append('\n');
    }

    private static void units(StringBuilder page) {
        page.append(
                "## Units\n\nUnits of your own stand under `units`, each once as a mass or a volume, perhaps by another of"
                        + " them: `units: {sack: 50 kg, drum charge: 0.8 sack, tin: 18 L}`. They stand wherever a unit of mass"
                        + " or volume may, in singular or plural, alone or in a compound: `3 sacks/d`, `5 g/sack`. Words that"
                        + " mean several amounts (ounce, gallon, quintal, ton) are never taken for granted.\n\nOne spelling each; `µ` may be written for `u`, `m³` for `m3`, `l` for `L`, `a` for `yr`,"
                        + " `ft3/s` for `cfs`, `°C` for `degC`. A year is 365.25 d.\n\n| measures | units |\n| --- | --- |\n");
        for (Dimension dimension : Dimension.values()) {
            row(page, dimension.label(), dimension.accepted().replace("-,", "none,"));
        }
    }

    private static String takes(Key key) {
        return switch (key.kind()) {
            case QUANTITY -> key.dimension().label() + ", " + key.range();
            case CHOICE -> key.choices().stream().map(c -> "`" + c + "`").collect(Collectors.joining(", "));
            case TEXT -> "text";
            case FILE -> "file";
            case DATE -> "date";
            case FLAG -> "`true`, `false`";
            case UNIT -> "unit";
        };
    }

    private static void row(StringBuilder page, String... cells) {
        page.append("| ")
                .append(Stream.of(cells).map(c -> c.replace("|", "\\|")).collect(Collectors.joining(" | ")))
                .append(" |\n");
    }
}
