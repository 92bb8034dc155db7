// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.report.RunRecord;
import org.silverwake.cli.report.Shading;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.Trial;
import org.silverwake.cli.text.Numbers;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.cli.whatif.SiteNames;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapWords;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.ScreeningRule;
import org.silverwake.model.transport.Bound;

/** What is told of the run: title, cautions, warnings, what was assumed, the record, flow states, words by code. */
final class RunColumns {
    private static final int DIGITS = 4;

    /** Longest text that is taken along [bytes] (chosen). */
    private static final long MOST_TEXT = 200_000;

    private final DataJson json;
    private final Outcome outcome;
    private final ReachUnits units;
    private final boolean hidden;
    private final SiteNames names;
    private int leftOut;

    private RunColumns(DataJson json, Linear linear, Audience audience) {
        this.json = json;
        this.outcome = linear.outcome();
        this.units = linear.units();
        this.hidden = audience == Audience.PUBLIC;
        this.names = SiteNames.of(outcome.scenario());
    }

    static void write(DataJson json, Linear linear, Audience audience, String version) throws IOException {
        new RunColumns(json, linear, audience).write(version);
    }

    private void write(String version) throws IOException {
        ScenarioInput.Project project = outcome.scenario().project();
        json.raw().writeObjectFieldStart("meta");
        json.raw().writeStringField("title", project.title());
        json.raw().writeStringField("date", project.date().toString());
        json.raw().writeStringField("preparedBy", project.preparedBy());
        json.raw().writeNullField("validUntil");
        json.raw().writeStringField("version", version);
        json.raw().writeStringField("language", project.language());
        json.raw().writeNumberField("year", outcome.scenario().fieldNotes().year());
        json.raw().writeStringField("currency", outcome.scenario().fieldNotes().currency());
        json.raw().writeEndObject();
        if (hidden) {
            json.raw().writeNullField("notForPosting");
        } else {
            json.raw().writeStringField("notForPosting", MapWords.english().notForPosting());
        }
        json.texts("cautions", Cautions.of(outcome));
        json.texts("warnings", told(outcome.warnings()));
        json.texts("assumptions", told(assumptions()));
        json.raw().writeNumberField("leftOutTexts", leftOut);
        record();
        source();
        tried();
        states();
        codes();
    }

    /** A public page leaves out what names single sites, and says how many lines those are. */
    private List<String> told(List<String> texts) {
        List<String> told =
                texts.stream().filter(text -> !hidden || !names.isNamedIn(text)).toList();
        leftOut += texts.size() - told.size();
        return told;
    }

    private List<String> assumptions() {
        List<String> assumptions = new ArrayList<>();
        Set<String> ofNotes = new LinkedHashSet<>();
        var plan = outcome.scenario().fieldNotes();
        for (ScenarioInput.Site site : plan.sites()) {
            NotedSites.balance(plan, site)
                    .ifPresent(balance -> balance.assumed()
                            .forEach(assumed -> ofNotes.add(assumed.what() + ": "
                                    + Numbers.shown(assumed.value().middle(), DIGITS) + " ("
                                    + Numbers.shown(assumed.value().low(), DIGITS) + " to "
                                    + Numbers.shown(assumed.value().high(), DIGITS) + ") "
                                    + assumed.unit() + "; " + assumed.source())));
        }
        assumptions.addAll(ofNotes);
        assumptions.addAll(outcome.gaps());
        return assumptions;
    }

    private void record() throws IOException {
        json.raw().writeObjectFieldStart("record");
        RunRecord.inputs(json.raw(), outcome.scenario());
        json.raw().writeNumberField("reaches", outcome.basin().network().size());
        json.raw().writeNumberField("cells", outcome.result().cells().count());
        json.raw()
                .writeStringField(
                        "coordinateSystem", outcome.basin().layer().crs().name());
        json.raw().writeNumberField("closure", outcome.result().worstClosure());
        json.raw().writeNumberField("changeOnHalving", outcome.changeOnHalving().loads());
        settings();
        json.raw().writeEndObject();
    }

    /** The scenario's text, with which an office page can save what its levers say as a scenario. */
    private void source() throws IOException {
        json.raw().writeArrayFieldStart("source");
        for (ScenarioInput.SourceFile source : outcome.scenario().sourceFiles()) {
            Path file = outcome.scenario().folder().resolve(source.file());
            boolean text = file.toString().endsWith(".yaml");
            if (!hidden && text && source.role().equals("scenario") && Files.size(file) <= MOST_TEXT) {
                json.raw().writeStartObject();
                json.raw().writeStringField("role", source.role());
                json.raw().writeStringField("file", source.file().toString().replace('\\', '/'));
                json.raw().writeStringField("text", new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
                json.raw().writeEndObject();
            }
        }
        json.raw().writeEndArray();
    }

    /** What the run itself tries already, so that a trial of a trial says both; nothing on a public page, which has no source either. */
    private void tried() throws IOException {
        Trial trial = hidden ? Trial.NONE : outcome.scenario().fieldNotes().trial();
        json.raw().writeObjectFieldStart("tried");
        shares("practices", trial.practices());
        shares("sites", trial.sites());
        json.texts("closed", trial.closed());
        json.raw().writeEndObject();
    }

    private void shares(String key, Map<String, Double> shares) throws IOException {
        json.raw().writeObjectFieldStart(key);
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            json.raw().writeNumberField(share.getKey(), share.getValue());
        }
        json.raw().writeEndObject();
    }

    private void settings() throws IOException {
        Map<String, Double> shown = outcome.scenario().settings().shown();
        json.raw().writeArrayFieldStart("settings");
        for (Setting setting : SettingList.all()) {
            Double value = shown.get(setting.path());
            if (value != null) {
                json.raw().writeStartObject();
                json.raw().writeStringField("key", setting.path());
                json.number("value", value);
                json.raw().writeStringField("unit", setting.unit());
                json.raw()
                        .writeBooleanField(
                                "given", outcome.scenario().settings().isGiven(setting.path()));
                json.raw().writeStringField("source", setting.source());
                json.raw().writeEndObject();
            }
        }
        json.raw().writeEndArray();
    }

    private void states() throws IOException {
        json.raw().writeArrayFieldStart("states");
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            ScenarioInput.FlowState state = outcome.scenario().states().get(s);
            json.raw().writeStartObject();
            json.raw().writeStringField("name", state.name());
            json.raw().writeNumberField("share", state.share());
            json.raw().writeBooleanField("flood", state.flood());
            json.runs("dry", dry(s));
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
    }

    /** Reaches without water. */
    private BitSet dry(int state) {
        BitSet dry = new BitSet();
        for (int r = 0; r < outcome.basin().network().size(); r++) {
            dry.set(r, !outcome.result().isWet(state, r));
        }
        return units.whole(dry);
    }

    /** Looks by key; words that stand beside them are each guideline's, since factors differ. */
    private void shades() throws IOException {
        json.raw().writeArrayFieldStart("shades");
        for (LineClass shade : Shading.classes(1, true)) {
            json.raw().writeStartObject();
            json.raw().writeStringField("key", shade.key());
            json.raw().writeStringField("color", shade.color());
            json.raw().writeNumberField("width", shade.width());
            json.raw().writeArrayFieldStart("dash");
            for (double length : shade.dash()) {
                json.raw().writeNumber(length);
            }
            json.raw().writeEndArray();
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
    }

    private void codes() throws IOException {
        ScreeningRule rule = outcome.screening().rule();
        json.raw().writeObjectFieldStart("rule");
        json.raw().writeNumberField("factorWaterBed", rule.factorWaterBed());
        json.raw().writeNumberField("factorFish", rule.factorFish());
        json.raw().writeNumberField("boundsRatio", rule.boundsRatio());
        json.raw().writeNumberField("farAbove", Shading.FAR);
        json.raw().writeEndObject();
        shades();
        List<String> answers = new ArrayList<>();
        for (Answer answer : Answer.values()) {
            answers.add(answer.words());
        }
        json.texts("answers", answers);
        json.raw().writeArrayFieldStart("reasons");
        for (NotAssessed reason : NotAssessed.values()) {
            json.raw().writeStartObject();
            json.raw().writeStringField("key", reason.name());
            json.raw().writeStringField("words", reason.words());
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
        List<String> bounds = new ArrayList<>();
        for (Bound bound : Bound.values()) {
            bounds.add(Words.bound(bound));
        }
        json.texts("bounds", bounds);
        List<String> variants = new ArrayList<>();
        for (int v = 0; v < outcome.result().variants(); v++) {
            variants.add(Words.variant(outcome.result().input(), v));
        }
        json.texts("variants", variants);
    }
}
