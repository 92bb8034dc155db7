// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;
import org.silverwake.model.input.Settings;

/** Scalar settings, wherever they stand in the file, and the partition coefficient in its two spellings. */
final class SettingsSection {
    private static final String LOG_KD = "mercury.log10-kd";
    private static final String LOG_DOC = "mercury.doc-log10-k";

    /** Numbers up to here under kd are taken for logarithms [L/kg]. */
    private static final double LARGEST_LOGARITHM = 10;

    private static final double LITERS_PER_CUBIC_METER = 1000;

    private SettingsSection() {}

    static Settings read(ScenarioValue root) {
        Map<String, Double> given = new HashMap<>();
        for (Setting setting : SettingList.all()) {
            ScenarioValue value = root.atPath(setting.path());
            if (setting.path().startsWith("mercury.") && setting.path().contains("log10") && isKdItself(value)) {
                value.problem(
                        "looks like the partition coefficient itself; give its base-10 logarithm as a bare number, "
                                + Key.of(setting).range());
            } else {
                value.quantity().ifPresent(v -> given.put(setting.path(), v));
            }
        }
        readKd(root).ifPresent(log -> given.put(LOG_KD, log));
        return Settings.of(given);
    }

    /** The basis of Kd, with what it needs and what it forbids. */
    static Mercury mercury(ScenarioValue section, List<FlowState> states, Settings settings) {
        boolean free = section.at("basis").choice().orElse("filtered").equals("free");
        ScenarioValue doc = section.at("doc-log10-k");
        if (free && !doc.isPresent()) {
            section.at("basis")
                    .problem(
                            "free needs mercury.doc-log10-k, the binding to dissolved organic carbon; give it, or basis:"
                                    + " filtered");
        }
        if (!free && doc.isPresent()) {
            doc.problem("acts only with basis: free, since a Kd of basis filtered already holds what dissolved organic"
                    + " carbon binds; leave it out, or give a Kd of basis free and say basis: free");
        }
        for (FlowState state : states) {
            if (free && state.dissolvedOrganicCarbon().isEmpty()) {
                section.at("basis")
                        .problem("free needs dissolved-organic-carbon in flow state " + state.name()
                                + "; give it in mg/L");
            }
        }
        return new Mercury(free ? Mercury.Basis.FREE : Mercury.Basis.FILTERED);
    }

    private static Optional<Double> readKd(ScenarioValue root) {
        ScenarioValue kd = root.atPath("mercury.kd");
        Optional<String> text = kd.text();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (root.atPath(LOG_KD).isPresent()) {
            kd.problem("stands beside mercury.log10-kd; keep one of them");
            return Optional.empty();
        }
        String number = text.get().replaceAll("\\s*[A-Za-z].*", "");
        if (isSmall(number)) {
            kd.problem(text.get() + " looks like a logarithm; write mercury.log10-kd: " + number
                    + ", or give Kd itself such as 200000 L/kg");
            return Optional.empty();
        }
        return kd.quantity().stream()
                .boxed()
                .map(si -> StrictMath.log10(si * LITERS_PER_CUBIC_METER))
                .findFirst();
    }

    private static boolean isSmall(String number) {
        return number.matches("-?\\d*\\.?\\d+") && Double.parseDouble(number) < LARGEST_LOGARITHM;
    }

    private static boolean isKdItself(ScenarioValue value) {
        return value.isScalar()
                && value.text()
                        .map(t -> t.matches("\\d[\\d.]*(e\\d+)?(\\s*L/kg)?")
                                && Double.parseDouble(t.replaceAll("\\s*L/kg", "")) >= 2 * LARGEST_LOGARITHM)
                        .orElse(false);
    }
}
