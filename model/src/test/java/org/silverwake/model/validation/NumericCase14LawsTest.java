// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.Reaeration;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.Partheniades1965;
import org.silverwake.model.solids.Stokes1851;
import org.silverwake.model.water.ManningChannel;
import org.silverwake.model.water.Mixing;
import org.silverwake.model.water.Section;
import org.silverwake.model.water.Shear;
import org.silverwake.model.water.WaterProperties;

/**
 * Numeric case 14: every law at a few points, from an independent implementation in another language. It states 1e-12;
 * values have 12 significant digits, so half of the last digit is up to 5e-12.
 */
@Reference(key = "numericcases", locator = "14_laws.json")
class NumericCase14LawsTest {
    /** PRINTED: half of the twelfth digit (at most 5e-12), relative, in percent. */
    private static final double PRINTED_PERCENT = 5.1e-10;
    /** PRINTED inputs: viscosity and density come with 12 digits too, and their errors add to the result's. */
    private static final double PRINTED_INPUTS_PERCENT = 1.6e-9;

    private static JsonCase laws;

    @BeforeAll
    static void read() throws IOException {
        laws = JsonCase.read("14_laws.json");
    }

    @Test
    void water() {
        for (Map<String, Object> row : laws.expected("water")) {
            WaterProperties water = WaterProperties.at(JsonCase.number(row, "temperature_c"));
            check(row, "density_kell_kg_per_m3", water.density());
            check(row, "viscosity_checks_b29_pa_s", water.kinematicViscosity() * water.density());
            // the case takes R as 8.314462618 J/mol/K too
            check(
                    row,
                    "henry_hg0_air_over_water",
                    ElementalMercury.airOverWater(JsonCase.number(row, "temperature_c")));
        }
    }

    @Test
    void manningChannels() {
        for (Map<String, Object> row : laws.expected("manning")) {
            double slope = JsonCase.number(row, "slope");
            double density = JsonCase.number(row, "density_kg_per_m3");
            double n = JsonCase.number(row, "manning_n");
            double bottom = JsonCase.number(row, "bottom_width_m");
            double side = JsonCase.number(row, "side_slope");
            Section section = ManningChannel.normal(JsonCase.number(row, "discharge_m3_per_s"), bottom, side, n, slope);
            check(row, "top_width", section.width());
            check(row, "mean_depth", section.depth());
            check(row, "area", section.width() * section.depth());
            check(row, "radius", section.radius());
            check(row, "velocity", section.velocity());
            double depth = side == 0 ? section.depth() : (section.width() - bottom) / (2 * side);
            assertThat(depth)
                    .as("depth, from the top width where the sides lean (a difference: four times the rounding)")
                    .isCloseTo(JsonCase.number(row, "depth"), withinPercentage(4 * PRINTED_PERCENT));
            mixing(row, section, slope, n, density);
        }
    }

    /** The case's two readings of shear: with the section's radius (ours), and with its largest depth. */
    private static void mixing(Map<String, Object> row, Section section, double slope, double n, double density) {
        Shear radius = Shear.of(section, slope, n, density, 1e-3);
        check(row, "shear_with_radius_pa", radius.total());
        check(row, "shear_velocity_with_radius_m_per_s", radius.velocity(density));
        check(row, "dispersion_with_ustar_of_radius_m2_per_s", dispersion(section, radius.velocity(density)));
        check(row, "mixing_length_with_ustar_of_radius_m", length(section, radius.velocity(density)));
        Section flat = new Section(section.width(), section.depth(), section.velocity(), section.depth(), false);
        Shear depth = Shear.of(flat, slope, 0, density, 1e-3);
        check(row, "shear_with_depth_pa", depth.total());
        check(row, "shear_velocity_with_depth_m_per_s", depth.velocity(density));
        check(row, "dispersion_with_ustar_of_depth_m2_per_s", dispersion(section, depth.velocity(density)));
        check(row, "mixing_length_with_ustar_of_depth_m", length(section, depth.velocity(density)));
    }

    private static double dispersion(Section section, double shearVelocity) {
        return Mixing.longitudinal(section.velocity(), section.width(), section.depth(), shearVelocity);
    }

    private static double length(Section section, double shearVelocity) {
        return Mixing.fullMixingLength(
                Mixing.BANK, section.velocity(), section.width(), section.depth(), shearVelocity, 0.6);
    }

    @Test
    void settling() {
        for (Map<String, Object> row : laws.expected("settling")) {
            double d = JsonCase.number(row, "diameter_m");
            double grain = JsonCase.number(row, "density_kg_per_m3");
            double water = JsonCase.number(row, "water_density_kg_per_m3");
            double nu = JsonCase.number(row, "kinematic_viscosity_m2_per_s");
            double w = new FergusonChurch2004(JsonCase.number(row, "c1"), JsonCase.number(row, "c2"))
                    .velocity(d, grain, water, nu);
            assertThat(w)
                    .isCloseTo(
                            JsonCase.number(row, "ferguson_church_m_per_s"), withinPercentage(PRINTED_INPUTS_PERCENT));
            if (row.get("stokes_m_per_s") == null) {
                assertThatThrownBy(() -> new Stokes1851().velocity(d, grain, water, nu))
                        .hasMessageContaining("Stokes does not hold");
            } else {
                assertThat(new Stokes1851().velocity(d, grain, water, nu))
                        .isCloseTo(JsonCase.number(row, "stokes_m_per_s"), withinPercentage(PRINTED_INPUTS_PERCENT));
            }
        }
    }

    @Test
    void gasExchange() {
        for (Map<String, Object> row : laws.expected("gas")) {
            double velocity = JsonCase.number(row, "velocity_m_per_s");
            double depth = JsonCase.number(row, "depth_m");
            check(row, "oconnor-dobbins", Reaeration.OCONNOR_DOBBINS.perDay(velocity, depth));
            check(row, "churchill", Reaeration.CHURCHILL.perDay(velocity, depth));
            check(row, "owens", Reaeration.OWENS.perDay(velocity, depth));
            String chosen = Reaeration.at(velocity, depth)
                    .name()
                    .toLowerCase(Locale.ROOT)
                    .replace('_', '-');
            assertThat(chosen).isEqualTo(row.get("covar_choice"));
        }
    }

    @Test
    void kroneRouseAndErosion() {
        for (Map<String, Object> row : laws.expected("krone_rouse_erosion")) {
            double tau = JsonCase.number(row, "tau_pa");
            double p = Deposition.krone(tau, JsonCase.number(row, "tau_cd_pa"));
            check(row, "p", p);
            // the case takes u* = sqrt(tau/1000)
            check(row, "rouse_of_1e-3_m_per_s", Deposition.rouse(1e-3, StrictMath.sqrt(tau / 1000)));
            check(
                    row,
                    "erosion_kg_per_m2_s",
                    Partheniades1965.erosion(
                            JsonCase.number(row, "m_kg_per_m2_s"), tau, JsonCase.number(row, "tau_ce_pa")));
        }
    }

    private static void check(Map<String, Object> row, String key, double ours) {
        double expected = JsonCase.number(row, key);
        if (expected == 0) {
            assertThat(ours).as("%s of %s", key, row).isZero();
        } else {
            assertThat(ours).as("%s of %s", key, row).isCloseTo(expected, withinPercentage(PRINTED_PERCENT));
        }
    }
}
