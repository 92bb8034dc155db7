// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.stream.Stream;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.RanzMarshall1952;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Section;
import org.silverwake.model.water.Shear;
import org.silverwake.model.water.StateHydraulics;
import org.silverwake.model.water.WaterProperties;

/** Gross settling rates of all classes and of droplets in one flow state, at that state's temperature. */
final class Settling {
    private final int classes;
    private final List<ParticleClass> particles;
    private final double[] velocity;
    private final WaterProperties properties;
    private final double setDown;
    private final double overbankPerMeter;

    Settling(TransportInput input, int state) {
        this.classes = input.classes().size();
        this.particles = Stream.concat(
                        input.classes().stream(),
                        input.layout().forms().stream()
                                .map(Form::carriage)
                                .filter(Droplets.class::isInstance)
                                .map(carriage -> ((Droplets) carriage).particles()))
                .toList();
        this.properties = input.hydraulics().properties(state);
        this.setDown = input.flood().get(state) ? input.options().setDownLength() : 0;
        this.overbankPerMeter = input.flood().get(state) ? input.options().overbankPerMeter() : 0;
        this.velocity = particles.stream()
                .mapToDouble(p -> p.law()
                        .velocity(p.diameter(), p.density(), properties.density(), properties.kinematicViscosity()))
                .toArray();
    }

    Deposition.Flow flow(Section section, Shear shear, boolean still) {
        return new Deposition.Flow(
                section.velocity(),
                section.depth(),
                shear.velocity(properties.density()),
                shear.skin(),
                setDown,
                still);
    }

    Deposition.Flow flow(StateHydraulics water, int cell) {
        return new Deposition.Flow(
                water.velocity(cell),
                water.depth(cell),
                water.shearVelocity(cell),
                water.skinShear(cell),
                setDown,
                water.isStill(cell));
    }

    /** Rate at which a flood takes suspended load overbank in a cell [1/s]; 0 in other states and in still water. */
    double overbank(StateHydraulics water, int cell) {
        return water.isStill(cell) ? 0 : overbank(water.velocity(cell));
    }

    /** Rate at which a flood takes suspended load overbank [1/s] at a velocity [m/s]; 0 in other states. */
    double overbank(double velocity) {
        return overbankPerMeter * velocity;
    }

    /** Gross rate of class j in a cell [1/s] where all solids together are {@code solids} [kg/m3]. */
    double rate(int j, StateHydraulics water, int cell, Deposition.Flow flow, double solids) {
        return water.isThrough(cell) ? 0 : rate(j, flow, solids);
    }

    /** Gross rate of class j [1/s] where all solids together are {@code solids} [kg/m3]. */
    double rate(int j, Deposition.Flow flow, double solids) {
        ParticleClass each = particles.get(j);
        double reynolds = velocity[j] * each.diameter() / properties.kinematicViscosity();
        double hindered = velocity[j] * Deposition.hindrance(solids, each.density(), reynolds);
        return Deposition.rate(each, hindered, flow);
    }

    /** Number of forms that are droplets [-]. */
    int droplets() {
        return particles.size() - classes;
    }

    /** Gross rate of the k-th form that is droplets [1/s] where all solids together are {@code solids} [kg/m3]. */
    double rateOfDroplets(int k, Deposition.Flow flow, double solids) {
        return rate(classes + k, flow, solids);
    }

    /** Rate at which clean droplets of the k-th such form dissolve [1/s] at a temperature [degC]. */
    double dissolving(int k, double celsius) {
        double diameter = particles.get(classes + k).diameter();
        double transfer = RanzMarshall1952.massTransfer(
                diameter,
                velocity[classes + k],
                properties.kinematicViscosity(),
                ElementalMercury.diffusivity(celsius));
        return RanzMarshall1952.rate(transfer, diameter, ElementalMercury.SOLUBILITY, 1);
    }
}
