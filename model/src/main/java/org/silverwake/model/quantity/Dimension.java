// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a number measures, with its accepted units. The first unit of each is SI (factor 1), except angles, which are
 * degrees throughout the project. A unit that two dimensions share belongs first to the one named first. Feet are international feet (0.3048 m exactly), miles 5280 of them.
 */
public enum Dimension {
    /** Lengths [m]. */
    LENGTH("length", "m 1|km 1000|cm 0.01|mm 1e-3|um 1e-6|ft 0.3048|mi 1609.344"),
    /** Areas [m2]. */
    AREA("area", "m2 1|km2 1e6|ha 1e4|mi2 2589988.110336|acre 4046.8564224"),
    /** Volumes [m3]. */
    VOLUME("volume", "m3 1|L 1e-3|ML 1e3"),
    /** Masses [kg]. */
    MASS("mass", "kg 1|t 1000|g 1e-3|mg 1e-6"),
    /** Durations [s]. */
    TIME("duration", "s 1|min 60|h 3600|d 86400|yr 31557600"),
    /** Volume per time [m3/s]. */
    DISCHARGE(
            "discharge",
            "m3/s 1|L/s 1e-3|L/min 1e-3:60|m3/h 1:3600|m3/d 1:86400|m3/yr 1:31557600|ML/d 1e3:86400|cfs 0.028316846592"),
    /** Velocities [m/s]. */
    VELOCITY(
            "velocity",
            "m/s 1|cm/s 1e-2|mm/s 1e-3|um/s 1e-6|m/h 1:3600|km/h 1000:3600|m/d 1:86400|cm/d 1e-2:86400|cm/yr 1e-2:31557600|mm/yr 1e-3:31557600|ft/s 0.3048"),
    /** Discharge per drainage area [m/s]. */
    SPECIFIC_DISCHARGE(
            "specific discharge",
            "m/s 1|L/s/km2 1e-9|m3/s/km2 1e-6|mm/d 1e-3:86400|mm/yr 1e-3:31557600|cfs/mi2 0.028316846592:2589988.110336"),
    /** Discharge per length of river [m2/s]. */
    LATERAL_DISCHARGE("discharge per length of river", "m2/s 1|L/s/km 1e-6|m3/s/km 1e-3"),
    /** Mass per time [kg/s]. */
    MASS_FLOW(
            "mass per time",
            "kg/s 1|g/s 1e-3|mg/s 1e-6|kg/h 1:3600|g/h 1e-3:3600|t/h 1e3:3600|kg/d 1:86400|g/d 1e-3:86400|t/d 1e3:86400|kg/yr 1:31557600|g/yr 1e-3:31557600|t/yr 1e3:31557600"),
    /** Mass per area and time [kg/m2/s]. */
    AREA_FLUX(
            "mass per area and time",
            "kg/m2/s 1|g/m2/s 1e-3|g/m2/d 1e-3:86400|kg/m2/yr 1:31557600|t/ha/yr 0.1:31557600"),
    /** Mass per volume of solid [kg/m3]. */
    DENSITY("density", "kg/m3 1|g/cm3 1000|t/m3 1000"),
    /** Mass per volume of water [kg/m3]. */
    CONCENTRATION("concentration", "kg/m3 1|g/L 1|g/m3 1e-3|mg/L 1e-3|ug/L 1e-6|ng/L 1e-9|pg/L 1e-12|mg/m3 1e-6"),
    /** Mass per dry mass of solids [kg/kg]. */
    MASS_CONTENT("content per dry mass", "kg/kg 1|g/kg 1e-3|mg/kg 1e-6|ug/kg 1e-9|g/t 1e-6|ug/g 1e-6|ng/g 1e-9"),
    /** Mass taken in per body mass and time [1/s]. */
    DOSE("mass per body weight and day", "kg/kg/s 1|mg/kg/d 1e-6:86400|ug/kg/d 1e-9:86400"),
    /** Content of solids over concentration in water [m3/kg]. */
    PARTITION_COEFFICIENT("partition coefficient", "m3/kg 1|L/kg 1e-3|mL/g 1e-3"),
    /** Base-10 logarithm of a partition coefficient in L/kg, written as a bare number [-]. */
    LOG10_PARTITION_COEFFICIENT("base-10 logarithm of L/kg", "log10 L/kg 1"),
    /** First-order rates [1/s]. */
    RATE("rate", "1/s 1|1/h 1:3600|1/d 1:86400|1/yr 1:31557600"),
    /** Shares per length [1/m]. */
    PER_LENGTH("share per length", "1/m 1|1/km 1e-3"),
    /** Temperatures [K]. */
    TEMPERATURE("temperature", "K 1|degC 1 273.15|degF 5:9 255.3722222222222"),
    /** Pressures and shear stresses [Pa]. */
    PRESSURE("pressure or shear stress", "Pa 1|kPa 1000|N/m2 1"),
    /** Ratios and shares [-]; a bare number will do. */
    DIMENSIONLESS("plain number", "- 1|% 0.01"),
    /** Slopes [-]; a bare number is fall over length. */
    SLOPE("slope", "- 1|% 0.01|m/m 1|m/km 1e-3|ft/mi 1:5280"),
    /** Angles [degrees]; a bare number is degrees. */
    ANGLE("angle", "deg 1");

    private final String label;
    private final List<Unit> units;

    Dimension(String label, String units) {
        this.label = label;
        List<Unit> list = new ArrayList<>();
        for (String entry : units.split("\\|")) {
            list.add(unitOf(entry));
        }
        this.units = List.copyOf(list);
    }

    /** The name in a reader's words, as in "specific discharge". */
    public String label() {
        return label;
    }

    /** Accepted units, SI first. */
    public List<Unit> units() {
        return units;
    }

    /** Whether a number without a unit is accepted. */
    public boolean isBare() {
        return this == SLOPE || this == ANGLE || this == DIMENSIONLESS || this == LOG10_PARTITION_COEFFICIENT;
    }

    /** The accepted units as people read them: "m3/s, L/s, ...". */
    public String accepted() {
        return units.stream().map(Unit::name).collect(Collectors.joining(", "));
    }

    /** The unit of this spelling or one of its variants, if this dimension accepts it. */
    public Optional<Unit> findUnit(String spelling) {
        String name = Spelling.canonical(spelling);
        return units.stream().filter(u -> u.name().equals(name)).findFirst();
    }

    /**
     * The unit of this spelling.
     *
     * @throws IllegalArgumentException if this dimension does not accept it; the message says what the unit measures, if
     *     it is known at all, and lists the accepted ones
     */
    public Unit requireUnit(String spelling) {
        Optional<Unit> unit = findUnit(spelling);
        if (unit.isPresent()) {
            return unit.get();
        }
        for (Dimension other : values()) {
            if (other.findUnit(spelling).isPresent()) {
                throw new IllegalArgumentException(spelling + " is a unit of " + other.label + ", not of " + label
                        + "; give one of " + accepted());
            }
        }
        throw new IllegalArgumentException(
                spelling + " is not known as a unit of " + label + "; give one of " + accepted());
    }

    /** Parses "name factor[:divisor] [offset]", where the name may hold one blank ("log10 L/kg 1"). */
    private static Unit unitOf(String entry) {
        boolean log = entry.startsWith("log10 ");
        String[] parts = (log ? entry.substring(6) : entry).split(" ");
        String[] ratio = parts[1].split(":");
        double factor = Double.parseDouble(ratio[0]) / (ratio.length > 1 ? Double.parseDouble(ratio[1]) : 1);
        double offset = parts.length > 2 ? Double.parseDouble(parts[2]) : 0;
        return new Unit(log ? "log10 " + parts[0] : parts[0], factor, offset);
    }
}
