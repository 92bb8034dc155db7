// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.RanzMarshall1952;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Section;
import org.silverwake.model.water.Shear;
import org.silverwake.model.water.StateHydraulics;
import org.silverwake.model.water.WaterProperties;

/** Gross settling rates of all classes in one flow state, at that state's temperature. */
final class Settling {
    private final TransportInput input;
    private final double[] velocity;
    private final WaterProperties properties;
    private final double setDown;
    private final double overbankPerMeter;

    Settling(TransportInput input, int state) {
        this.input = input;
        this.properties = input.hydraulics().properties(state);
        this.velocity = new double[input.classes().size()];
        this.setDown = input.flood().get(state) ? input.options().setDownLength() : 0;
        this.overbankPerMeter = input.flood().get(state) ? input.options().overbankPerMeter() : 0;
        for (int j = 0; j < velocity.length; j++) {
            velocity[j] = fall(input.classes().get(j));
        }
    }

    Deposition.Flow flow(Section section, Shear shear) {
        return new Deposition.Flow(
                section.velocity(), section.depth(), shear.velocity(properties.density()), shear.skin(), setDown);
    }

    Deposition.Flow flow(double velocity, double depth, double shearVelocity, double skinShear) {
        return new Deposition.Flow(velocity, depth, shearVelocity, skinShear, setDown);
    }

    /** Rate at which a flood takes suspended load overbank [1/s] at a velocity [m/s]; 0 in other states. */
    double overbank(double velocity) {
        return overbankPerMeter * velocity;
    }

    static Deposition.Flow flow(Settling settling, StateHydraulics water, int cell) {
        return settling.flow(water.velocity(cell), water.depth(cell), water.shearVelocity(cell), water.skinShear(cell));
    }

    /** Gross rate of droplets or other particles [1/s] where all solids together are {@code solids} [kg/m3]. */
    double rate(ParticleClass particles, Deposition.Flow flow, double solids) {
        return rate(particles, fall(particles), flow, solids);
    }

    private double fall(ParticleClass particles) {
        return particles
                .law()
                .velocity(
                        particles.diameter(),
                        particles.density(),
                        properties.density(),
                        properties.kinematicViscosity());
    }

    /** Rate at which clean droplets dissolve [1/s] at a temperature [degC] and solubility [kg/m3]. */
    double dissolving(ParticleClass droplets, double celsius, double solubility) {
        double transfer = RanzMarshall1952.massTransfer(
                droplets.diameter(),
                fall(droplets),
                properties.kinematicViscosity(),
                ElementalMercury.diffusivity(celsius));
        return RanzMarshall1952.rate(transfer, droplets.diameter(), solubility, 1);
    }

    /** Gross rate of class j [1/s] where all solids together are {@code solids} [kg/m3]. */
    double rate(int j, Deposition.Flow flow, double solids) {
        return rate(input.classes().get(j), velocity[j], flow, solids);
    }

    private double rate(ParticleClass particles, double fall, Deposition.Flow flow, double solids) {
        double reynolds = fall * particles.diameter() / properties.kinematicViscosity();
        double hindered = fall * Deposition.hindrance(solids, particles.density(), reynolds);
        return Deposition.rate(particles, hindered, flow);
    }
}
