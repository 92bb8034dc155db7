// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.input;

import java.util.List;
import java.util.stream.Stream;

/**
 * All scalar settings, in the order of the reference page. Defaults are written here and, of fish and cyanide, in
 * {@link FurtherSettings}.
 */
public final class SettingList {
    static final String TRADE = "common practice, no source";
    private static final String MUST = "must be stated";
    static final String NO_GROWTH = "no dependence unless stated";
    static final String GROWTH = "growth per degC above 20 degC";

    private static final List<Setting> MAIN = List.of(
            of("rivers.snap-tolerance", "m", 0, 1, 1000, TRADE, "line ends nearer than this are joined"),
            of("sites.snap-distance", "m", 1, 500, 20000, TRADE, "farthest reach a site may be moved to"),
            of(
                    "places.snap-distance",
                    "m",
                    1,
                    500,
                    20000,
                    TRADE,
                    "farthest reach a place, gauge or abstraction may be moved to"),
            of(
                    "discharge.area-exponent",
                    "-",
                    0.3,
                    1,
                    1.5,
                    "discharge in proportion to area",
                    "growth of discharge with drainage area, one gauge alone"),
            of("channel.width-coefficient", "m", 0.5, 8.3, 50, TRADE, "width at 1 m3/s, downstream"),
            of(
                    "channel.width-exponent",
                    "-",
                    0,
                    0.5,
                    1,
                    "Leopold & Maddock (1953), downstream b (from memory)",
                    "width, downstream"),
            of("channel.depth-coefficient", "m", 0.02, 0.40, 5, TRADE, "depth at 1 m3/s, downstream"),
            of(
                    "channel.depth-exponent",
                    "-",
                    0,
                    0.4,
                    1,
                    "Leopold & Maddock (1953), downstream f (from memory)",
                    "depth, downstream"),
            of(
                    "channel.station-width-exponent",
                    "-",
                    0,
                    0.26,
                    1,
                    "Leopold & Maddock (1953), at-a-station b",
                    "width, from state to state"),
            of(
                    "channel.station-depth-exponent",
                    "-",
                    0,
                    0.40,
                    1,
                    "Leopold & Maddock (1953), at-a-station f",
                    "depth, from state to state"),
            required("channel.manning-n", "-", 0.01, 0.3, "Manning channels; shear where given"),
            of(
                    "channel.canal-manning-n",
                    "-",
                    0.01,
                    0.025,
                    0.15,
                    "Chow (1959), earth canal, clean and straight (from memory)",
                    "shear in canals of which neither slope nor Manning n is known"),
            of("channel.side-slope", "-", 0, 0, 10, "rectangular section", "Manning channels: horizontal per vertical"),
            of(
                    "channel.slope-floor",
                    "-",
                    1e-7,
                    1e-5,
                    1e-2,
                    "floor used in national hydrography (from memory)",
                    "slope from attribute or DEM"),
            of(
                    "solids.density",
                    "kg/m3",
                    1100,
                    2650,
                    20000,
                    "quartz (from memory)",
                    "grain density of classes that state none"),
            of(
                    "solids.tau-cd",
                    "Pa",
                    0.01,
                    0.1,
                    10,
                    "van Rijn (1989): 0.06 to 1.0 Pa; 0.1 Pa common practice, no source",
                    "classes that state none"),
            of(
                    "solids.cohesive-below",
                    "um",
                    0,
                    63,
                    2000,
                    "silt-sand boundary of the usual grade scales (from memory)",
                    "classes that do not say whether they are cohesive"),
            of(
                    "solids.bed-porosity",
                    "-",
                    0.2,
                    0.6,
                    0.95,
                    "0.4 sand to 0.9 mud (from memory)",
                    "bed content, net sedimentation"),
            of(
                    "solids.net-sedimentation",
                    "mm/yr",
                    0,
                    0,
                    1000,
                    "no net sedimentation unless stated",
                    "carried-through bound"),
            of("solids.median-diameter", "mm", 0.01, 1, 500, TRADE, "bed d50, for skin shear"),
            of(
                    "mercury.log10-kd",
                    "log10 L/kg",
                    1,
                    5.3,
                    8,
                    "EPA/600/R-05/074, median, range 4.2 to 6.9 (from memory)",
                    "Hg(II) on suspended solids"),
            of(
                    "mercury.kd-slope",
                    "-",
                    0,
                    0,
                    2,
                    "no dependence unless stated",
                    "fall of log10 Kd per decade of suspended sediment"),
            of(
                    "mercury.kd-reference-sediment",
                    "mg/L",
                    0.1,
                    100,
                    100000,
                    TRADE,
                    "suspended sediment at which log10 Kd holds"),
            of(
                    "mercury.doc-log10-k",
                    "log10 L/kg",
                    0,
                    0,
                    8,
                    "off unless basis is free",
                    "binding to dissolved organic carbon"),
            of(
                    "mercury.grain-release-rate",
                    "1/d",
                    0,
                    0,
                    10,
                    "no conversion unless stated",
                    "grain-bound mercury to Hg(II)"),
            of(
                            "mercury.reduction-rate",
                            "1/d",
                            0,
                            0.01,
                            100,
                            "net in the field, 0.001 to 0.1 /d (from memory)",
                            "filtered Hg(II) to Hg(0) at 20 degC, where Hg(0) is carried; driven by light")
                    .varying(),
            of("mercury.reduction-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": reduction"),
            required("mercury.oxidation-rate", "1/d", 0, 100, "Hg(0) to Hg(II) at 20 degC; driven by light")
                    .varying(),
            of("mercury.oxidation-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": oxidation"),
            of(
                            "mercury.methylation-rate",
                            "1/d",
                            0,
                            0,
                            10,
                            "none in water unless stated",
                            "all Hg(II) in water to MeHg at 20 degC, where MeHg is carried")
                    .varying(),
            of("mercury.methylation-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": methylation"),
            required(
                            "mercury.demethylation-rate",
                            "1/d",
                            0,
                            100,
                            "filtered MeHg in water to Hg(II) at 20 degC; driven by light")
                    .varying(),
            of("mercury.demethylation-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": demethylation"),
            of(
                            "mercury.complex-breakdown-rate",
                            "1/d",
                            0,
                            0.01,
                            100,
                            "slow end of 0.01 to 0.3 /d, " + TRADE,
                            "mercury-cyanide complex to Hg(II) at 20 degC")
                    .varying(),
            of("mercury.complex-breakdown-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": breakdown of the complex"),
            of(
                            "mercury.light-attenuation",
                            "1/m",
                            0,
                            0,
                            1000,
                            "rates are means over the depth unless stated",
                            "fall of light with depth, on rates that light drives")
                    .varying(),
            of(
                            "mercury.air-film-velocity",
                            "mm/s",
                            0.01,
                            2.5,
                            1000,
                            "Liss & Slater (1974): 3000 cm/h of water vapor, times the root of 18/201 (from memory)",
                            "evasion of Hg(0): transfer through the air's film")
                    .varying(),
            optional("mercury.evasion-velocity", "m/h", 0, 100, "measured evasion of Hg(0), in place of the two films")
                    .varying(),
            of(
                    "mercury.droplet-passivation",
                    "-",
                    0.01,
                    1,
                    1,
                    "clean surface, " + TRADE,
                    "share of the clean surface's rate at which droplets dissolve"),
            of(
                    "mercury.methyl-log10-kd",
                    "log10 L/kg",
                    1,
                    5.4,
                    8,
                    "EPA/600/R-05/074, about 5.4, range 4.2 to 6.2 (from memory)",
                    "MeHg on suspended solids"),
            required(
                    "mercury.methyl-doc-log10-k",
                    "log10 L/kg",
                    0,
                    8,
                    "binding of MeHg to dissolved organic carbon; basis free with MeHg carried"),
            of("mercury.complex-kd", "L/kg", 0, 0, 1e6, "0 to 1000, " + TRADE, "mercury-cyanide complex on solids"),
            of("mercury.elemental-kd", "L/kg", 0, 0, 1e6, "none unless stated", "dissolved Hg(0) on solids"),
            of("bed.active-layer", "cm", 0.1, 3, 200, "1 to 10 cm, " + TRADE, "thickness of the bed's mixed layer"),
            of(
                            "bed.burial",
                            "mm/yr",
                            0,
                            0,
                            1000,
                            "none unless stated; 0.1 to 10 mm/yr (from memory)",
                            "burial of the bed")
                    .varying(),
            of(
                    "bed.erosion-rate",
                    "kg/m2/s",
                    0,
                    1e-4,
                    1,
                    "Partheniades (1965), 1e-5 to 5e-4 (from memory)",
                    "M of erosion; where burial is given it only shares erosion out over the flow states"),
            of(
                    "bed.tau-ce",
                    "Pa",
                    0.01,
                    0.5,
                    100,
                    "0.1 fresh mud to 5 consolidated (from memory)",
                    "critical shear stress for erosion"),
            of(
                            "bed.pore-exchange",
                            "cm/d",
                            0,
                            0.5,
                            1000,
                            "molecular diffusion through about 1 cm, " + TRADE,
                            "exchange between pore water and river, per bed area")
                    .varying(),
            of(
                    "bed.log10-kd",
                    "log10 L/kg",
                    1,
                    4.9,
                    8,
                    "EPA/600/R-05/074, 3.8 to 6.0 (from memory); Lyon et al. (1997), 3.76 to 6.00",
                    "Hg(II) in the bed"),
            of(
                    "bed.methyl-log10-kd",
                    "log10 L/kg",
                    1,
                    3.9,
                    8,
                    "EPA/600/R-05/074, 2.8 to 5.0 (from memory); Lyon et al. (1997), 2.81 to 5.04",
                    "MeHg in the bed"),
            of(
                    "bed.dissolved-organic-carbon",
                    "mg/L",
                    0,
                    0,
                    10000,
                    "off unless basis is free",
                    "dissolved organic carbon of the pore water"),
            of(
                            "bed.methylation-rate",
                            "1/d",
                            0,
                            0.001,
                            1,
                            "slow end of 0.001 to 0.1 /d (from memory)",
                            "Hg(II) in the bed to MeHg at 20 degC, where MeHg is carried")
                    .varying(),
            of(
                    "bed.methylation-theta",
                    "-",
                    1,
                    1.07,
                    1.2,
                    "twice as fast in 10 degC, " + TRADE,
                    GROWTH + ": methylation in the bed"),
            of(
                            "bed.demethylation-rate",
                            "1/d",
                            0,
                            0.1,
                            100,
                            "middle of 0.01 to 1 /d (from memory)",
                            "MeHg in the bed to Hg(II) at 20 degC")
                    .varying(),
            of(
                    "bed.demethylation-theta",
                    "-",
                    1,
                    1.07,
                    1.2,
                    "twice as fast in 10 degC, " + TRADE,
                    GROWTH + ": demethylation in the bed"),
            of(
                            "bed.methyl-ceiling",
                            "ug/kg",
                            0.01,
                            20,
                            1e6,
                            TRADE + "; beds rich in tailings hold far less MeHg than the usual percentages say",
                            "MeHg content of the bed above which methylation makes no more, by kind of reach")
                    .varying(),
            of("bed.droplet-dissolution-rate", "1/d", 0, 0, 10, "none unless stated", "droplets in the bed to Hg(0)"),
            of("bed.horizon", "yr", 1, 30, 500, TRADE, "beds slower than this are shown after so many years"),
            of(
                            "cyanide.loss-rate",
                            "1/d",
                            0,
                            0,
                            100,
                            "none unless stated: dilution alone, the safe side",
                            "WAD cyanide in water at 20 degC: all that takes it away")
                    .varying(),
            of("cyanide.loss-theta", "-", 1, 1, 1.2, NO_GROWTH, GROWTH + ": loss of cyanide"),
            of(
                    "cyanide.free-share",
                    "-",
                    0,
                    1,
                    1,
                    "all of it unless stated, the safe side",
                    "free cyanide as a share of WAD cyanide"),
            of(
                    "background.solids-mercury-content",
                    "mg/kg",
                    0,
                    0.05,
                    1000,
                    "range 0.02 to 0.2, " + TRADE,
                    "background"),
            of("flood.set-down-length", "km", 0.01, 1, 100, TRADE, "e-fold length of sand set down in a flood"),
            of(
                    "flood.overbank-share-per-km",
                    "1/km",
                    0,
                    0,
                    1,
                    "none unless stated",
                    "suspended load lost overbank in flood"),
            of(
                    "mixing.transverse-coefficient",
                    "-",
                    0.05,
                    0.6,
                    3,
                    "Fischer et al. (1979), natural channels (from memory)",
                    "full-mixing length"),
            of("screening.factor-water-bed", "-", 1, 5, 1000, TRADE, "stated factor for water and bed"),
            of("screening.factor-fish", "-", 1, 10, 1000, TRADE, "stated factor for fish"),
            of("screening.bounds-ratio", "-", 1, 3, 1000, TRADE, "hatching where the bounds differ by more"));

    private static final List<Setting> ALL =
            Stream.of(MAIN, FurtherSettings.FISH).flatMap(List::stream).toList();

    private SettingList() {}

    /** All settings, in order. */
    public static List<Setting> all() {
        return ALL;
    }

    static Setting of(String path, String unit, double low, double fallback, double high, String source, String acts) {
        return new Setting(path, unit, factor(unit), low, fallback, true, high, source, acts, false);
    }

    static Setting required(String path, String unit, double low, double high, String acts) {
        return new Setting(path, unit, factor(unit), low, low, false, high, MUST, acts, false);
    }

    private static Setting optional(String path, String unit, double low, double high, String acts) {
        return new Setting(path, unit, factor(unit), low, low, false, high, "not used unless stated", acts, false);
    }

    private static double factor(String unit) {
        return Setting.dimensionOf(unit).requireUnit(unit).toSi();
    }
}
