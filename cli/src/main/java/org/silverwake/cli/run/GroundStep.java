// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.cli.scenario.Backdrop;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.Sheets;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.geo.map.BackdropLayer;
import org.silverwake.geo.map.Ground;
import org.silverwake.geo.map.Locator;
import org.silverwake.geo.map.OwnStyle;
import org.silverwake.geo.map.Relief;
import org.silverwake.geo.terrain.ElevationModel;

/** Reads what maps lie upon; problems are kept until those of the river are known too. */
final class GroundStep {
    private static final double POINTS_PER_METER = 72 / 0.0254;

    private final Backdrop backdrop;
    private final Sheets sheets;
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final List<BackdropLayer> layers = new ArrayList<>();
    private Locator locator = Locator.globe();

    GroundStep(ScenarioInput scenario) {
        this.backdrop = scenario.outputs().backdrop();
        this.sheets = scenario.outputs().sheets();
    }

    /** Reads the layers near the rivers. */
    void read(VectorLayer rivers) {
        for (Backdrop.Layer layer : backdrop.layers()) {
            try {
                BackdropLayer read =
                        BackdropLayer.read(source(layer.file(), layer.layer()), look(layer, style(layer)), rivers);
                read.missingColumns().forEach(text -> problems.add(layer.styleWhere() + ": " + text));
                read.missingLabel().ifPresent(text -> problems.add(layer.labelWhere() + ": " + text));
                warnings.addAll(read.warnings());
                layers.add(read);
            } catch (GeoDataException e) {
                problems.add(layer.where() + ": " + e.getMessage());
            }
        }
        if (sheets.locator().isPresent()) {
            try {
                BackdropLayer read =
                        BackdropLayer.readAll(source(sheets.locator().get(), Optional.empty()));
                warnings.addAll(read.warnings());
                locator = Locator.on(read);
            } catch (GeoDataException e) {
                problems.add(sheets.locatorWhere() + ": " + e.getMessage());
            }
        }
    }

    private static LayerSource source(Path file, Optional<String> layer) {
        return new LayerSource(file, layer, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The layer's own style, without what is wrong in it. */
    private Optional<OwnStyle> style(Backdrop.Layer layer) {
        if (layer.style().isEmpty()) {
            return Optional.empty();
        }
        try {
            OwnStyle style = OwnStyle.read(layer.style().get());
            if (style.hasTexts()) {
                problems.add(layer.styleWhere() + ": " + style.name()
                        + " has a TextSymbolizer; take it out, and name the column to be written as label");
            }
            return Optional.of(style);
        } catch (GeoDataException e) {
            e.getMessage().lines().forEach(line -> problems.add(layer.styleWhere() + ": " + line));
            return Optional.empty();
        }
    }

    private static BackdropLayer.Look look(Backdrop.Layer layer, Optional<OwnStyle> style) {
        OptionalDouble width = layer.width().isPresent()
                ? OptionalDouble.of(layer.width().getAsDouble() * POINTS_PER_METER)
                : OptionalDouble.empty();
        return new BackdropLayer.Look(
                BackdropLayer.Kind.valueOf(layer.kind().name()), layer.label(), layer.color(), width, style);
    }

    /** What lies under maps of a network. */
    Ground under(RiverMap map, Optional<ElevationModel> elevation) {
        Optional<Relief> relief =
                backdrop.hillShade() ? elevation.flatMap(model -> Relief.of(model, map)) : Optional.empty();
        return new Ground(relief, layers, locator, sheets.walking(), sheets.boat());
    }

    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /**
     * Says what was wrong.
     *
     * @throws GeoDataException with one line for each problem
     */
    void require() {
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
    }

    /** A problem of the river together with the own ones. */
    GeoDataException with(GeoDataException other) {
        return problems.isEmpty()
                ? other
                : new GeoDataException(other.getMessage() + "\n" + String.join("\n", problems), other);
    }
}
