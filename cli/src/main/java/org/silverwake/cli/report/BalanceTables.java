// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.Assumed;
import org.silverwake.model.release.Baseline;
import org.silverwake.model.release.Gain;
import org.silverwake.model.release.NoteFinding;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.SitePath;
import org.silverwake.model.release.Spread;
import org.silverwake.model.release.WorstPractice;

/**
 * What field notes say: each site's balance, what was assumed and what is odd, mercury use by practice for an action plan, and
 * what each practice costs and gives back. Nothing is written where there are no notes.
 */
final class BalanceTables {
    private static final String VAPOR = "vapor hazard";

    private final Outcome outcome;
    private final FieldNotesPlan plan;
    private final List<Noted> noted = new ArrayList<>();

    private record Noted(Site site, NotedSite notes, SiteBalance balance) {}

    private BalanceTables(Outcome outcome) {
        this.outcome = outcome;
        this.plan = outcome.scenario().fieldNotes();
        for (Site site : plan.sites()) {
            Optional<NotedSite> notes = NotedSites.find(plan, site);
            notes.ifPresent(n -> noted.add(
                    new Noted(site, n, n.balance(NotedSites.inForce(plan).by(site), plan.year()))));
        }
    }

    static void write(Outcome outcome, Path folder) {
        BalanceTables tables = new BalanceTables(outcome);
        if (tables.noted.isEmpty()) {
            return;
        }
        tables.balances(folder.resolve("site-balance.csv"));
        tables.assumed(folder.resolve("field-notes-assumed.csv"));
        tables.findings(folder.resolve("field-notes-findings.csv"));
        tables.use(folder.resolve("mercury-use.csv"));
        if (!tables.plan.practices().isEmpty()) {
            tables.practices(folder.resolve("practices.csv"));
        }
    }

    /** What balances say in the printed summary: a line a site, with the vapor hazard named. */
    static List<String> lines(Outcome outcome) {
        List<String> lines = new ArrayList<>();
        List<Noted> all = new BalanceTables(outcome).noted;
        for (Noted each : all) {
            SiteBalance balance = each.balance();
            lines.add("mercury of " + each.site().name() + " by field notes [kg/yr]: to the river "
                    + range(balance.range(year -> year.river())) + ", to the air "
                    + range(balance.range(year -> year.air())) + " (" + VAPOR + "), kept "
                    + range(balance.range(SitePath.KEPT))
                    + (balance.worst().isEmpty() ? "" : "; to be ended (Minamata, Annex C): " + worst(balance)));
        }
        for (Baseline.Row row :
                Baseline.of(all.stream().map(Noted::balance).toList()).rows()) {
            lines.add("mercury use by practice [kg/yr], " + words(row) + ": used " + range(row.used()) + ", got back "
                    + range(row.recovered()) + ", to the air " + range(row.air()) + " (" + VAPOR + "), to the river "
                    + range(row.river()) + ", kept in tailings " + range(row.kept()));
        }
        if (!lines.isEmpty()) {
            lines.add("of these ranges the river is run with the "
                    + outcome.scenario().fieldNotes().level().name().toLowerCase(Locale.ROOT)
                    + " one to the river (field-notes.level); all are in site-balance.csv");
        }
        return lines;
    }

    private static String words(Baseline.Row row) {
        String practice = Words.plain(row.practice().name()).replace("none", "no mercury");
        return practice + (row.retorts() ? " with retorts" : "") + ", " + Numbers.shown(row.sheds(), 3) + " sheds";
    }

    private static String range(Spread spread) {
        String middle = shown(spread.middle());
        return spread.hasWidth() ? middle + " (" + shown(spread.low()) + " to " + shown(spread.high()) + ")" : middle;
    }

    private static String shown(double rate) {
        return Numbers.shown(rate * Quantity.SECONDS_PER_YEAR, 3);
    }

    private static String worst(SiteBalance balance) {
        return balance.worst().stream().map(BalanceTables::words).sorted().collect(Collectors.joining(", "));
    }

    private static String words(WorstPractice practice) {
        return switch (practice) {
            case WHOLE_ORE -> "whole-ore amalgamation";
            case OPEN_BURNING -> "open burning of amalgam";
            case RESIDENTIAL_BURNING -> "burning where people live";
            case CYANIDE_AFTER_MERCURY -> "cyanide leaching of tailings to which mercury was added";
        };
    }

    private static String words(SitePath path) {
        return switch (path) {
            case CHARGED -> "in: put into drums";
            case USED -> "in: used, by mercury per gold";
            case ERODED -> "in: in eroded ground";
            case FROM_DRUMS -> "in: from contaminated drums";
            case HELD -> "held back in drums";
            case SQUEEZED_BACK -> "squeezed back";
            case RETORT_RECOVERED -> "recovered by retort";
            case TAILINGS_RECOVERED -> "recovered from tailings";
            case PRODUCT -> "left in the gold";
            case AIR_OPEN -> "to air, open burning (" + VAPOR + ")";
            case AIR_RETORT -> "to air, past retorts (" + VAPOR + ")";
            case LAID_DOWN -> "come down nearby from air (" + VAPOR + ")";
            case RUNOFF -> "of that run off to the river, an upper bound";
            case KEPT -> "in tailings kept";
            case SLURRY_DROPLETS -> "to the river: droplets";
            case SLURRY_EXCHANGEABLE -> "to the river: exchangeable Hg(II)";
            case SLURRY_GRAIN_BOUND -> "to the river: grain-bound";
            case SLURRY_UNSPLIT -> "to the river with tailings, form not known";
            case TANK_COMPLEX -> "to the river: cyanide complex";
            case TANK_RESIDUE -> "to the river with leached tailings";
        };
    }

    private CsvTableWriter table(Path file, List<String> header) {
        return new CsvTableWriter(file, header, outcome.scenario().outputs().tables());
    }

    private static CsvTableWriter spread(CsvTableWriter csv, Spread spread, double unit) {
        return csv.number(spread.low() * unit).number(spread.middle() * unit).number(spread.high() * unit);
    }

    private void balances(Path file) {
        List<String> header = List.of(
                "site",
                "group",
                "year",
                "path",
                "low [kg/yr]",
                "middle [kg/yr]",
                "high [kg/yr]",
                "relative closure of the balance [-]",
                "to be ended (Minamata Convention, Annex C)");
        try (CsvTableWriter csv = table(file, header)) {
            for (Noted each : noted) {
                for (SitePath path : SitePath.values()) {
                    Spread range = each.balance().range(path);
                    if (range.high() > 0) {
                        row(csv, each, words(path));
                        spread(csv, range, Quantity.SECONDS_PER_YEAR)
                                .number(each.balance().middle().closure())
                                .text(worst(each.balance()))
                                .end();
                    }
                }
            }
        }
    }

    private void row(CsvTableWriter csv, Noted each, String what) {
        csv.text(each.site().name())
                .text(each.site().group())
                .text(String.valueOf(plan.year()))
                .text(what);
    }

    private void assumed(Path file) {
        try (CsvTableWriter csv = table(file, List.of("site", "what", "low", "middle", "high", "unit", "source"))) {
            for (Noted each : noted) {
                for (Assumed assumed : each.balance().assumed()) {
                    csv.text(each.site().name()).text(assumed.what());
                    spread(csv, assumed.value(), 1)
                            .text(assumed.unit())
                            .text(assumed.source())
                            .end();
                }
            }
        }
    }

    private void findings(Path file) {
        try (CsvTableWriter csv = table(file, List.of("site", "what was found, and kept"))) {
            for (Noted each : noted) {
                for (NoteFinding finding : each.balance().findings()) {
                    csv.text(each.site().name()).text(finding.text()).end();
                }
            }
        }
    }

    private void use(Path file) {
        List<String> header = new ArrayList<>(List.of("practice", "retorts", "sites [-]", "sheds [-]", "gold [kg/yr]"));
        for (String what :
                List.of("mercury used", "got back", "to the air (" + VAPOR + ")", "to the river", "in tailings kept")) {
            List.of("low", "middle", "high").forEach(end -> header.add(what + ", " + end + " [kg/yr]"));
        }
        Baseline baseline = Baseline.of(noted.stream().map(Noted::balance).toList());
        try (CsvTableWriter csv = table(file, header)) {
            for (Baseline.Row row : baseline.rows()) {
                csv.text(Words.plain(row.practice().name()).replace("none", "no mercury"))
                        .yes(row.retorts())
                        .text(String.valueOf(row.sites()))
                        .number(row.sheds())
                        .number(row.gold() * Quantity.SECONDS_PER_YEAR);
                for (Spread amount : List.of(row.used(), row.recovered(), row.air(), row.river(), row.kept())) {
                    spread(csv, amount, Quantity.SECONDS_PER_YEAR);
                }
                csv.end();
            }
        }
    }

    private void practices(Path file) {
        String money = plan.currency() + "/yr";
        List<String> header = new ArrayList<>(List.of("practice", "site", "in force", "first year"));
        for (String what : List.of("kept out of the river, middle [kg/yr]", "kept out of the air, middle [kg/yr]")) {
            header.add(what);
        }
        for (String what : List.of("cost", "worth of mercury and gold", "left after cost")) {
            List.of("low", "middle", "high").forEach(end -> header.add(what + ", " + end + " [" + money + "]"));
        }
        header.add("pays for itself");
        try (CsvTableWriter csv = table(file, header)) {
            for (OfferedPractice offered : plan.practices()) {
                for (Noted each : noted) {
                    if (offered.isFor(each.site()) && each.notes().notes().isPresent()) {
                        practice(csv, offered, each);
                    }
                }
            }
        }
    }

    private void practice(CsvTableWriter csv, OfferedPractice offered, Noted each) {
        SiteBalance before = each.notes().balance(List.of(), plan.year());
        SiteBalance after = each.notes()
                .balance(
                        List.of(offered.practice()),
                        Math.max(plan.year(), offered.practice().startYear()));
        Gain gain = Gain.of(
                offered.practice(),
                each.notes().notes().orElseThrow(),
                each.notes().year(),
                plan.prices().orElse(new Gain.Prices(0, 0)));
        csv.text(offered.practice().name())
                .text(each.site().name())
                .yes(plan.isInForce(offered, each.site()))
                .text(
                        offered.practice().startYear() > 0
                                ? String.valueOf(offered.practice().startYear())
                                : "")
                .number((before.middle().river() - after.middle().river()) * Quantity.SECONDS_PER_YEAR)
                .number((before.middle().air() - after.middle().air()) * Quantity.SECONDS_PER_YEAR);
        spread(csv, gain.cost(), 1);
        spread(csv, gain.givenBack(), 1);
        spread(csv, gain.net(), 1);
        csv.text(
                        plan.prices().isEmpty()
                                ? "not known: no prices"
                                : Words.plain(gain.verdict().name()))
                .end();
    }
}
