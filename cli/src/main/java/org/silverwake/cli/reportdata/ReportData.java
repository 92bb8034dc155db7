// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.whatif.Contributor;
import org.silverwake.cli.whatif.Contributors;
import org.silverwake.cli.whatif.Contributors.Grouping;
import org.silverwake.cli.whatif.Levers;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.cli.whatif.ResponseSize;

/** The data of the report page, as docs/reference/report-data.md tells it. */
public final class ReportData {
    /** Most characters of the data; beyond, sites are put together. */
    static final int MOST = 12_000_000;

    private static final int FORMAT = 1;
    private static final String TOO_FEW =
            "fewer than three sites are listed: sliders, releases and balance would tell of single sites, so a public page has none";
    private static final String NO_SITES = "no site is listed: what is shown is background alone";
    private static final String TOO_LARGE = "the river is too large for sliders in one file";

    private final Outcome outcome;
    private final Audience audience;
    private final String version;
    private final ReachUnits units;

    private ReportData(Outcome outcome, Audience audience, String version) {
        this.outcome = outcome;
        this.audience = audience;
        this.version = version;
        this.units = ReachUnits.of(outcome, audience);
    }

    /**
     * The data in one text that can stand in a script element: no "&lt;" in it, no line end that JavaScript would see.
     *
     * @param version of the program
     */
    public static String json(Outcome outcome, Audience audience, String version) {
        return json(outcome, audience, version, MOST);
    }

    /** The same with at most so many characters, as far as putting sites together makes it shorter. */
    static String json(Outcome outcome, Audience audience, String version, int most) {
        ReportData data = new ReportData(outcome, audience, version);
        for (Grouping grouping : Grouping.values()) {
            List<Contributor> contributors = Contributors.of(outcome.scenario(), audience, grouping);
            if (ResponseSize.estimate(outcome, data.units, contributors) <= most) {
                String text = data.text(contributors, grouping, reason(outcome, contributors));
                if (text.length() <= most) {
                    return text;
                }
            }
        }
        return data.text(List.of(), Grouping.ALL, Optional.of(TOO_LARGE));
    }

    private static Optional<String> reason(Outcome outcome, List<Contributor> contributors) {
        if (!contributors.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(outcome.scenario().sites().isEmpty() ? NO_SITES : TOO_FEW);
    }

    private String text(List<Contributor> contributors, Grouping grouping, Optional<String> reason) {
        Linear linear = Linear.of(outcome, units, contributors);
        Levers levers = Levers.of(linear, audience, grouping);
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            write(new DataJson(generator), linear, levers, grouping, reason);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString()
                .replace("<", "\\u003c")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private void write(DataJson json, Linear linear, Levers levers, Grouping grouping, Optional<String> reason)
            throws IOException {
        Blocks blocks = new Blocks();
        json.raw().writeStartObject();
        json.raw().writeNumberField("format", FORMAT);
        json.raw().writeStringField("audience", audience.name().toLowerCase(Locale.ROOT));
        RunColumns.write(json, linear, audience, version);
        ReachColumns.write(json, linear, audience);
        MeasureColumns.write(json, linear, blocks);
        GuidelineColumns.write(json, linear);
        LeverColumns.write(json, blocks, linear, levers, audience, grouping);
        GroupColumns.write(json, linear, audience);
        whatIf(json, levers, grouping, reason);
        BalanceColumns.write(json, linear, audience, grouping);
        json.texts("blocks", new ArrayList<>(blocks.texts()));
        json.raw().writeEndObject();
    }

    private static void whatIf(DataJson json, Levers levers, Grouping grouping, Optional<String> reason)
            throws IOException {
        json.raw().writeObjectFieldStart("whatIf");
        json.raw().writeBooleanField("possible", reason.isEmpty());
        json.text("reason", reason);
        json.raw().writeStringField("grouped", grouping.name().toLowerCase(Locale.ROOT));
        LeverColumns.deviation(json, "together", levers.together());
        LeverColumns.deviation(json, "closedTogether", levers.closedTogether());
        json.raw().writeEndObject();
    }
}
