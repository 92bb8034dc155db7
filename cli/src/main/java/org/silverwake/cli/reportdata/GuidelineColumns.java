// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.report.Shading;
import org.silverwake.cli.report.Shown;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.Measured;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.Receptor;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;

/** Guideline values that are compared, and places where the answer matters. */
final class GuidelineColumns {
    private static final double MILLION = 1e6;

    private final DataJson json;
    private final Linear linear;
    private final Outcome outcome;
    private final Screening screening;
    private final ReachUnits units;

    private GuidelineColumns(DataJson json, Linear linear) {
        this.json = json;
        this.linear = linear;
        this.outcome = linear.outcome();
        this.screening = outcome.screening();
        this.units = linear.units();
    }

    static void write(DataJson json, Linear linear) throws IOException {
        GuidelineColumns columns = new GuidelineColumns(json, linear);
        Optional<Guideline> shown = Shown.guideline(columns.outcome);
        json.raw().writeArrayFieldStart("guidelines");
        for (Guideline guideline : columns.screening.compared()) {
            columns.guideline(guideline, shown.filter(guideline::equals).isPresent());
        }
        json.raw().writeEndArray();
        columns.places();
    }

    private void guideline(Guideline guideline, boolean isDefault) throws IOException {
        var observable = guideline.observable();
        Optional<Measured> measured = Measured.of(outcome, guideline);
        json.raw().writeStartObject();
        json.raw().writeStringField("id", guideline.id());
        json.raw().writeStringField("name", guideline.displayName());
        json.raw().writeNumberField("value", guideline.value());
        json.raw().writeStringField("printed", guideline.printed());
        json.raw().writeStringField("unit", guideline.unit());
        json.raw().writeNumberField("perSi", guideline.fromSi());
        json.raw().writeStringField("medium", observable.medium().word());
        json.raw().writeStringField("observable", observable.words());
        json.raw().writeStringField("averaging", observable.averaging().word());
        json.raw().writeStringField("averagingWords", observable.averaging().words());
        json.raw().writeBooleanField("isOneForAllStates", observable.averaging().isOneForAllStates());
        json.raw().writeNumberField("factor", screening.rule().factor(observable.medium()));
        json.texts(
                "legend",
                Shading.classes(screening.rule().factor(observable.medium()), true).stream()
                        .map(LineClass::legend)
                        .toList());
        json.raw().writeStringField("protects", guideline.protects());
        json.raw().writeStringField("source", guideline.source().words());
        json.raw().writeStringField("checked", guideline.checked().word());
        json.raw().writeStringField("status", guideline.status().word());
        json.raw().writeStringField("note", guideline.note());
        json.raw().writeStringField("scope", guideline.scope() == Medium.Scope.REACH ? "reach" : "drinking-place");
        json.raw().writeBooleanField("isDefault", isDefault);
        json.raw().writeStringField("substance", substance(observable.substance()));
        json.raw()
                .writeNumberField(
                        "measure", measured.map(linear.measures()::indexOf).orElse(-1));
        json.raw().writeBooleanField("linear", measured.filter(linear::follows).isPresent());
        json.text(
                "reason",
                measured.isPresent()
                        ? measured.flatMap(Measured::fixed).filter(why -> !linear.follows(measured.get()))
                        : Optional.of(NotAssessed.NOT_MODELLED.words()));
        json.runs("leftOut", leftOut(guideline));
        doubt(observable.medium());
        nearBank(observable.substance());
        json.raw().writeEndObject();
    }

    private static String substance(Substance substance) {
        return substance.isMercury() ? "mercury" : substance.isCyanide() ? "cyanide" : "solids";
    }

    private BitSet leftOut(Guideline guideline) {
        BitSet leftOut = new BitSet();
        for (int u = 0; u < units.count(); u++) {
            leftOut.set(u, screening.isLeftOut(guideline, units.first(u)));
        }
        return leftOut;
    }

    /** Fish swim, so their doubts are their own. */
    private void doubt(Medium medium) throws IOException {
        if (medium != Medium.FISH) {
            json.raw().writeNullField("doubt");
            return;
        }
        json.numbers(
                "doubt",
                units.count(),
                u -> screening
                        .values()
                        .fishNeverBelow(units.last(u))
                        .map(NotAssessed::ordinal)
                        .orElse(-1));
    }

    /** Reaches near the bank below outfalls of cyanide, by flow state; null for other substances, whose contributors tell. */
    private void nearBank(Substance substance) throws IOException {
        if (!substance.isCyanide() || outcome.cyanide().isEmpty()) {
            json.raw().writeNullField("nearBank");
            return;
        }
        json.raw().writeArrayFieldStart("nearBank");
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            BitSet here = new BitSet();
            for (int r = 0; r < screening.reaches(); r++) {
                here.set(
                        r,
                        outcome.cyanide()
                                .get()
                                .result()
                                .solution(Bound.CARRIED_THROUGH, s)
                                .isNearBank(r));
            }
            json.runsItem(units.of(here));
        }
        json.raw().writeEndArray();
    }

    private void places() throws IOException {
        List<PlacedPoint> points = outcome.basin().points("place");
        json.raw().writeArrayFieldStart("places");
        for (int i = 0; i < points.size(); i++) {
            place(
                    outcome.scenario().places().get(i),
                    points.get(i),
                    screening.receptors().get(i));
        }
        json.raw().writeEndArray();
    }

    private void place(ScenarioInput.Place place, PlacedPoint at, Receptor receptor) throws IOException {
        json.raw().writeStartObject();
        json.raw().writeStringField("name", place.name());
        json.raw().writeStringField("uses", Words.uses(place.uses()));
        json.raw().writeStringField("mark", mark(place.uses()));
        json.raw().writeNumberField("lon", Math.rint(at.longitude() * MILLION) / MILLION);
        json.raw().writeNumberField("lat", Math.rint(at.latitude() * MILLION) / MILLION);
        json.raw().writeNumberField("reach", units.ofPlace(outcome.basin().reachAt(at)));
        if (place.people().isPresent()) {
            json.raw().writeNumberField("people", place.people().getAsInt());
        } else {
            json.raw().writeNullField("people");
        }
        json.raw().writeStringField("peopleSource", place.peopleSource());
        json.raw().writeBooleanField("drinking", receptor.isDrinkingPlace());
        json.raw().writeBooleanField("intake", receptor.kind() == Receptor.Kind.INTAKE);
        json.raw().writeEndObject();
    }

    /** The mark that maps give a place of these uses. */
    private static String mark(List<PlaceUse> uses) {
        if (uses.contains(PlaceUse.DRINKING_INTAKE) || uses.contains(PlaceUse.RIVERSIDE_WELL)) {
            return "intake";
        }
        if (uses.contains(PlaceUse.VILLAGE) || uses.contains(PlaceUse.SCHOOL)) {
            return "village";
        }
        return uses.contains(PlaceUse.FISHING) ? "fishing" : "place";
    }
}
