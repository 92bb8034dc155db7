// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.report.Shading;
import org.silverwake.cli.text.Texts;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.write.PhoneMap.Fact;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;

/** What a phone tells of one stretch or place: answer, estimate, guide value and their ratio, in the words of the page. */
final class PhoneTable {
    private final SheetWords words;
    private final Texts texts;
    private final Guideline guideline;

    PhoneTable(SheetWords words, Guideline guideline) {
        this.words = words;
        this.texts = words.texts();
        this.guideline = guideline;
    }

    /** A look in words. */
    String legend(ReachShade shade) {
        String factor = words.number(words.factor(guideline));
        String far = words.number(Shading.FAR * words.factor(guideline));
        String key = "shade." + shade.key();
        return switch (shade) {
            case FAR_ABOVE -> texts.text(key, far);
            case ABOVE -> texts.text(key, factor, far);
            case BELOW -> texts.text(key, factor);
            default -> texts.text(key);
        };
    }

    /** Where the value applies. */
    List<Fact> facts(ScreeningRow row) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(texts.text("page.answer"), answer(row.answer())));
        row.values()
                .ifPresent(values -> facts.add(new Fact(
                        texts.text("page.card.estimate"),
                        range(
                                        values.band().low() * guideline.fromSi(),
                                        values.band().high() * guideline.fromSi())
                                + " " + SheetWords.unit(guideline))));
        facts.add(value());
        if (row.values().isPresent()) {
            String times = range(row.ratioLow().orElseThrow(), row.ratioHigh().orElseThrow());
            facts.add(new Fact(texts.text("page.card.ratio"), texts.text("page.card.times", times)));
        }
        return facts;
    }

    /** Where it does not. */
    List<Fact> leftOut() {
        return List.of(new Fact(texts.text("page.answer"), texts.text("page.answer.none")), value());
    }

    /** The guide value itself. */
    Fact value() {
        return new Fact(
                texts.text("page.card.guide"), texts.text("page.reach.named", words.value(guideline), guideline.id()));
    }

    private String range(double low, double high) {
        String from = words.number(low);
        String to = words.number(high);
        return from.equals(to) ? from : texts.text("page.range", from, to);
    }

    private String answer(Answer answer) {
        return texts.text(
                switch (answer) {
                    case ABOVE -> "answer.above";
                    case MAY_BE_ABOVE -> "answer.may-be-above";
                    case BELOW_BY_THIS_ESTIMATE -> "answer.below";
                    case NOT_ASSESSED -> "answer.not-assessed";
                });
    }

    /** What maps say by marks on a line. */
    List<String> remarks(ScreeningRow row, boolean nearBank) {
        List<String> remarks = new ArrayList<>();
        if (row.verdict().hatched()) {
            remarks.add(texts.text("phone.bed"));
        }
        if (nearBank && row.values().isPresent()) {
            remarks.add(texts.text("phone.near-bank"));
        }
        if (row.verdict().aboveFromBackground()) {
            remarks.add(texts.text("phone.background"));
        }
        return remarks;
    }
}
