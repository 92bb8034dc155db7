// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.solids.BackgroundSediment;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyRun;
import org.silverwake.model.transport.TransportInput;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.HydraulicGeometry;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.ManningChannel;
import org.silverwake.model.water.ReachTable;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.Splits;
import org.silverwake.model.water.WaterProperties;
import org.silverwake.model.water.WaterSupply;

/**
 * One river in reaches of a kilometer below one mill, in Manning channels, with tailings in three classes. Where no source is
 * given with a value, model.md section 11 is: widths by downstream exponents, classes of 5, 20, 100 um, log10 Kd 4.2, 5.3, 6.9.
 */
final class FieldRiver {
    static final double YEAR = 365.25 * 86400;

    /** Content of river solids, default [kg/kg]. */
    static final double BACKGROUND = 0.05e-6;

    private static final double[] DIAMETERS = {5e-6, 20e-6, 100e-6};
    private static final List<Double> TAILINGS = List.of(0.3, 0.4, 0.3);
    private static final double[] RIVER_SOLIDS = {0.5, 0.4, 0.1};

    final int kilometers;
    double[] share;
    double[] headDischarge;
    double[] dischargePerKilometer;
    double[] sediment;
    double[] slope;
    double roughness;
    double medianDiameter;
    double criticalShear;
    double log10Kd = 5.3;
    double tailings;
    double mercury;
    OptionalDouble exchangeable = OptionalDouble.empty();

    FieldRiver(int kilometers) {
        this.kilometers = kilometers;
    }

    private double slopeAt(int reach) {
        double part = (reach + 0.5) / kilometers;
        return slope[0] * StrictMath.pow(slope[1] / slope[0], part);
    }

    private List<ParticleClass> classes() {
        List<ParticleClass> classes = new ArrayList<>();
        for (int j = 0; j < DIAMETERS.length; j++) {
            classes.add(new ParticleClass(
                    List.of("wash load", "silt", "fine sand").get(j),
                    DIAMETERS[j],
                    2650,
                    FergusonChurch2004.naturalGrains(),
                    j < 2,
                    criticalShear,
                    log10Kd,
                    OptionalDouble.empty(),
                    RIVER_SOLIDS[j]));
        }
        return classes;
    }

    private Hydraulics hydraulics(RiverNetwork network) {
        int states = share.length;
        double[] length = new double[kilometers];
        int[] group = new int[kilometers];
        Column slopes = new Column(kilometers);
        Column manning = new Column(kilometers);
        for (int r = 0; r < kilometers; r++) {
            length[r] = 1000;
            group[r] = r;
            slopes.put(r, slopeAt(r));
            manning.put(r, roughness);
        }
        Splits splits = Splits.of(network, Optional.empty());
        List<RoutedWater> water = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            double[] head = new double[kilometers];
            double[] along = new double[kilometers];
            head[0] = headDischarge[s];
            Arrays.fill(along, dischargePerKilometer[s]);
            water.add(RoutedWater.route(
                    network, splits, WaterSupply.of(head, along), new double[kilometers], new double[kilometers]));
        }
        ManningChannel channel = new ManningChannel(
                slopes, manning, new Column(kilometers), new HydraulicGeometry(8.3, 0.5, 0.4, 0.4, 0.26, 0.4), 0);
        return new Hydraulics(
                new ReachTable(network, length, group, Map.of()),
                water,
                share,
                Collections.nCopies(states, WaterProperties.at(25)),
                channel,
                slopes,
                manning,
                medianDiameter);
    }

    SteadyResult run() {
        int states = share.length;
        List<String> ids = new ArrayList<>();
        int[] from = new int[kilometers];
        int[] to = new int[kilometers];
        for (int r = 0; r < kilometers; r++) {
            ids.add("km " + r);
            from[r] = r;
            to[r] = r + 1;
        }
        RiverNetwork network = RiverNetwork.of(ids, from, to);
        SiteRelease mill = new SiteRelease(
                "mill",
                0,
                Collections.nCopies(states, mercury),
                exchangeable,
                TAILINGS,
                Collections.nCopies(states, tailings),
                Collections.nCopies(states, 0.0),
                false,
                Map.of(),
                List.of());
        List<BackgroundSediment> held = new ArrayList<>();
        for (double each : sediment) {
            held.add(new BackgroundSediment(each, 0));
        }
        return SteadyRun.run(new TransportInput(
                hydraulics(network),
                classes(),
                held,
                Collections.nCopies(states, false),
                BACKGROUND,
                Collections.nCopies(states, 0.0),
                Collections.nCopies(states, 0.0),
                List.of(mill),
                new TransportInput.Options(0, 0, 0.1, 0, 1000, 0, 0.6, true),
                Chemistry.none()));
    }
}
