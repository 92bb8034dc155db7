// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Carried;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Cyanide;

/** What tables, summary and record say of cyanide; nothing where none of it is carried. */
final class CyanideReport {
    private static final double MICROGRAMS_PER_LITER = 1e6;
    private static final int DIGITS = 4;

    private final Outcome outcome;
    private final Optional<Cyanide> cyanide;

    CyanideReport(Outcome outcome) {
        this.outcome = outcome;
        this.cyanide = outcome.cyanide();
    }

    /** Headings of what {@link #values} writes. */
    List<String> columns() {
        return cyanide.isPresent() ? List.of("WAD cyanide [ug/L]", "free cyanide [ug/L]") : List.of();
    }

    /** Largest values in a reach and flow state, near-bank values included. */
    void values(CsvTableWriter csv, int reach, int state) {
        cyanide.ifPresent(carried -> {
            boolean wet = carried.result().isWet(state, reach);
            csv.number(wet ? carried.result().high(state, reach, Cyanide.wad()) * MICROGRAMS_PER_LITER : Double.NaN)
                    .number(
                            wet
                                    ? carried.result().high(state, reach, carried.free()) * MICROGRAMS_PER_LITER
                                    : Double.NaN);
        });
    }

    /** Its budget; both bounds are the same, since nothing of it settles. */
    void balance(CsvTableWriter csv) {
        cyanide.ifPresent(carried -> {
            for (int s = 0; s < outcome.scenario().states().size(); s++) {
                Balance balance = carried.balance(s);
                for (Balance.Row row : balance.rows()) {
                    double year = row.rate() * Quantity.SECONDS_PER_YEAR;
                    csv.text(outcome.scenario().states().get(s).name())
                            .text("any")
                            .text("")
                            .text(Words.process(row.process()))
                            .text(row.form())
                            .number(year)
                            .number(year * share(s))
                            .number(balance.closure())
                            .end();
                }
            }
        });
    }

    private double share(int state) {
        return outcome.result().input().hydraulics().share(state);
    }

    /** Its budget over the year in words. */
    List<String> lines() {
        if (cyanide.isEmpty()) {
            return List.of();
        }
        List<String> terms = new ArrayList<>();
        for (Process process : Process.values()) {
            double year = 0;
            for (int s = 0; s < outcome.scenario().states().size(); s++) {
                year += cyanide.get().balance(s).sum(process) * share(s) * Quantity.SECONDS_PER_YEAR;
            }
            if (year > 0) {
                terms.add(Words.process(process) + " " + Numbers.shown(year, DIGITS));
            }
        }
        return List.of(
                "WAD cyanide over the year [kg as CN]: " + String.join(", ", terms),
                String.format(
                        Locale.ROOT,
                        "left over    %.1e of what enters, at worst; at most 1e-9 is allowed",
                        cyanide.get().result().worstClosure()));
    }

    void record(JsonGenerator json) throws IOException {
        if (cyanide.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("cyanideBalance");
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            Balance balance = cyanide.get().balance(s);
            json.writeStartObject();
            json.writeStringField(
                    "flowState", outcome.scenario().states().get(s).name());
            json.writeObjectFieldStart("kilogramsPerSecond");
            for (Balance.Row row : balance.rows()) {
                json.writeNumberField(Words.process(row.process()), row.rate());
            }
            json.writeEndObject();
            json.writeNumberField("closure", balance.closure());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** What every map and the end of a run say of it. */
    static List<String> cautions(Outcome outcome) {
        ScenarioInput scenario = outcome.scenario();
        List<String> cautions = new ArrayList<>();
        long tanks = scenario.sites().stream()
                .filter(site -> site.path() == ReleasePath.LEACH_TANK)
                .count();
        long without =
                scenario.sites().stream().filter(Carried::isWithoutItsCyanide).count();
        if (without > 0) {
            cautions.add("Cyanide from " + (without < tanks ? without + " of " + tanks + " " : "")
                    + "leach tanks was not assessed.");
        }
        if (outcome.cyanide().isPresent()) {
            cautions.add("Cyanide kills at once and is not mercury: water below a mercury value may still be deadly.");
        }
        return cautions;
    }

    /** In the table of sites. */
    static String words(Site site, int state) {
        return site.cyanide()
                .map(rates -> Numbers.shown(rates.get(state) * Quantity.SECONDS_PER_YEAR, DIGITS) + " kg/yr WAD")
                .orElse(site.path() == ReleasePath.LEACH_TANK ? "not assessed" : "");
    }

    /**
     * Highest concentration of a site's release over an effluent value of cyanide [-]; empty where it is not known. Free cyanide
     * is its stated share.
     */
    static Optional<Double> effluentRatio(ScenarioInput scenario, Site site, Guideline guideline) {
        Substance substance = guideline.observable().substance();
        if (!substance.isCyanide() || site.cyanide().isEmpty()) {
            return Optional.empty();
        }
        double highest = 0;
        for (int s = 0; s < site.water().size(); s++) {
            if (site.water().get(s) > 0) {
                highest = Math.max(
                        highest, site.cyanide().get().get(s) / site.water().get(s));
            }
        }
        double share = substance == Substance.FREE_CYANIDE ? scenario.settings().value("cyanide.free-share") : 1;
        return highest > 0 ? Optional.of(highest * share / guideline.value()) : Optional.empty();
    }
}
