// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.ScenarioInput.Outfall;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;

class SitesTableTest {
    /** ROUNDING: a few products of doubles, in percent. */
    private static final double ROUNDING = 1e-12;

    private static final double YEAR = 31557600;

    @TempDir
    private Path folder;

    private Site site(String header, String row) {
        return new ScenarioFolder(folder).site(header, row).read().sites().get(0);
    }

    @Test
    void yearlyReleaseIsTheSameRateInEveryState() {
        Site site = site("release,release_unit", "12,kg/yr");
        assertThat(site.mercury().orElseThrow())
                .hasSize(2)
                .allSatisfy(rate -> assertThat(rate).isCloseTo(12 / YEAR, withinPercentage(ROUNDING)));
        assertThat(site.exchangeableShare()).isEmpty();
        assertThat(site.classShares()).containsExactly(0.3, 0.7);
        assertThat(site.outfall()).isEqualTo(Outfall.BANK);
        assertThat(site.water()).containsExactly(0.0, 0.0);
    }

    @Test
    void yearSharesKeepTheYearsMass() {
        // the load of state s is the year's mass x a_s/(p_s year); p = 0.6, 0.4
        Site site = site("release,year_share_dry,year_share_wet", "12 kg/yr,0.9,0.1");
        List<Double> rates = site.mercury().orElseThrow();
        assertThat(rates.get(0)).isCloseTo(12 * 0.9 / (0.6 * YEAR), withinPercentage(ROUNDING));
        assertThat(rates.get(1)).isCloseTo(12 * 0.1 / (0.4 * YEAR), withinPercentage(ROUNDING));
        assertThat((0.6 * rates.get(0) + 0.4 * rates.get(1)) * YEAR).isCloseTo(12, withinPercentage(ROUNDING));
    }

    @Test
    void tailingsWithContentAndWater() {
        Site site = site(
                "tailings,content,exchangeable_share,class_wash_load,class_fine_sand,water,water_unit,outfall,river",
                "900 t/yr,45 mg/kg,0.15,0.5,0.5,0.4,L/s,mid-channel,Lamp");
        assertThat(site.tailings().orElseThrow().mass().get(0)).isCloseTo(900e3 / YEAR, withinPercentage(ROUNDING));
        assertThat(site.tailings().orElseThrow().content()).isCloseTo(45e-6, withinPercentage(ROUNDING));
        assertThat(site.classShares()).containsExactly(0.5, 0.5);
        assertThat(site.water().get(1)).isCloseTo(4e-4, withinPercentage(ROUNDING));
        assertThat(site.outfall()).isEqualTo(Outfall.MID_CHANNEL);
        assertThat(site.riverName()).contains("Lamp");
    }

    @Test
    void effluentIsItsOwnWater() {
        Site site = site("effluent_dry,effluent_wet,effluent_unit,concentration", "0.5,2,L/s,40 \u00b5g/L");
        assertThat(site.effluent().orElseThrow().flow()).containsExactly(5e-4, 2e-3);
        assertThat(site.water()).containsExactly(5e-4, 2e-3);
        assertThat(site.effluent().orElseThrow().concentration()).isCloseTo(4e-5, withinPercentage(ROUNDING));
    }

    @Test
    void doubtfulUnitIsAWarningAndLeachTankSaysCyanideIsNotAssessed() {
        ScenarioInput input = new ScenarioFolder(folder)
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,effluent,concentration\nPond,-20.1,-30.1,seepage,0.2 L/s,90 ug/L\n"
                                + "Yard,-20.1,-30.1,leach-tank,0.2 L/s,90 ug/L\n")
                .read();
        assertThat(input.sites().get(1).path()).isEqualTo(ReleasePath.LEACH_TANK);
        // cyanide holds more in solution than the 60 ug/L of Hg(0), so only the pond is doubtful
        assertThat(input.warnings()).noneMatch(w -> w.startsWith("sites.csv:3 concentration"));
        // solubility of Hg(0) about 60 ug/L: reference/cases.md, "Column in ug or mg?"
        assertThat(input.warnings())
                .anySatisfy(
                        w -> assertThat(w)
                                .isEqualTo(
                                        "sites.csv:2 concentration: is above 60 ug/L, the solubility of Hg(0); check the unit"));
        assertThat(input.warnings()).anySatisfy(w -> assertThat(w).contains("cyanide was not assessed"));
    }

    @Test
    void cyanideAsMassOrWithTheSitesWater() {
        Site mass = site("release,cyanide,year_share_dry,year_share_wet", "1 kg/yr,12 kg/yr,0.9,0.1");
        assertThat(mass.cyanide().orElseThrow().get(0)).isCloseTo(12 * 0.9 / (0.6 * YEAR), withinPercentage(ROUNDING));
        Site water = site("release,water,cyanide_concentration", "1 kg/yr,2 L/s,50 mg/L");
        assertThat(water.cyanide().orElseThrow().get(1)).isCloseTo(2e-3 * 0.05, withinPercentage(ROUNDING));
        assertThat(site("release", "1 kg/yr").cyanide()).isEmpty();
        assertThat(site("release,cyanide", "1 kg/yr,0 kg/yr").cyanide()).contains(List.of(0.0, 0.0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "release | 12 | release: 12 has no unit; give a mass per time in one of kg/s",
                "release | 12 kg | release: kg is a unit of mass, not of mass per time",
                "release | -12 kg/yr | release: -12 kg/yr is not allowed; give 0 to 1000000 kg/yr",
                "release | 4e9 kg/yr | release: 4e9 kg/yr is not allowed; give 0 to 1000000 kg/yr",
                "release | '' | release, tailings, effluent: none is given; give exactly one",
                "release,tailings,content | 1 kg/yr,9 t/yr,4 mg/kg | release, tailings, effluent: several are given",
                "tailings | 9 t/yr | content: is blank while tailings is given",
                "release,content | 1 kg/yr,4 mg/kg | tailings: is blank while content is given",
                "tailings,content | 9 t/yr,2000000 mg/kg | content: 2000000 mg/kg is not allowed; give 0 to 1000000 mg/kg",
                "effluent | 1 L/s | concentration: is blank while effluent is given",
                "effluent,concentration,water | 1 L/s,4 ug/L,1 L/s | water: stands beside effluent",
                "release_dry,release | 1 kg/yr,2 kg/yr | release: stands beside release_dry; keep one way",
                "release_dry | 1 kg/yr | release_wet: is blank while other flow states are given",
                "release,year_share_dry,year_share_wet | 1 kg/yr,0.5,0.4 | year_share: sums to 0.9",
                "release_dry,release_wet,year_share_dry,year_share_wet | 1 g/d,1 g/d,0.5,0.5 | year_share: stands beside release per flow state",
                "release,exchangeable_share | 1 kg/yr,1.5 | exchangeable_share: 1.5 is not allowed; give 0 to 1",
                "release,class_wash_load | 1 kg/yr,0.6 | class shares: sum to 1.3",
                "release,cyanide | 1 kg/yr,-3 kg/yr | cyanide: -3 kg/yr is not allowed; give 0 to 1000000 kg/yr",
                "release,cyanide | 1 kg/yr,3 mg/L | cyanide: mg/L is a unit of concentration, not of mass per time",
                "release,cyanide_concentration | 1 kg/yr,3 | cyanide_concentration: 3 has no unit",
                "release,cyanide_concentration | 1 kg/yr,3 mg/L | cyanide_concentration: is given while the site adds no water",
                "release,water,cyanide,cyanide_concentration | 1 kg/yr,1 L/s,1 kg/yr,3 mg/L | cyanide_concentration: stands beside cyanide",
                "release,cyanide_dry | 1 kg/yr,1 kg/yr | cyanide_wet: is blank while other flow states are given",
                "release,cyanide_dry,cyanide_wet,year_share_dry,year_share_wet | 1 kg/yr,1 g/d,1 g/d,0.5,0.5 | year_share: stands beside cyanide per flow state",
                "release,outfall | 1 kg/yr,middle | outfall: \"middle\" is not known; give bank or mid-channel",
            })
    void refusals(String header, String row, String message) {
        assertThat(new ScenarioFolder(folder).site(header, row).problems())
                .anySatisfy(p -> assertThat(p).startsWith("sites.csv:2 ").contains(message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Shed,-20.1,-30.1,slury,1 kg/yr | sites.csv:2 path: \"slury\" is not known; give slurry or leach-tank or seepage",
                "Shed,0,0,slurry,1 kg/yr | longitude, latitude: 0, 0 means no position fix",
                "Shed,-30.1,-120.1,slurry,1 kg/yr | latitude: -120.1 is not allowed; give -90 to 90 deg: longitude comes first",
                "Shed,,,slurry,1 kg/yr | are blank; give longitude and latitude in degrees (longitude first)",
                "Shed,-20.1,,slurry,1 kg/yr | latitude: is blank",
                "Shed,20 66 W,-30.1,slurry,1 kg/yr | longitude: \"20 66 W\": 66 minutes are not allowed; give below 60",
                ",-20.1,-30.1,slurry,1 kg/yr | name: is blank; give a name",
            })
    void rowsRefused(String row, String message) {
        assertThat(new ScenarioFolder(folder)
                        .file("sites.csv", "name,longitude,latitude,path,release\n" + row + "\n")
                        .problems())
                .anySatisfy(p -> assertThat(p).contains(message));
    }

    @Test
    void twoSitesOfOneNameAndATypedMinus() {
        // reference/cases.md: two sites on one node, one with a negative release typed by mistake
        List<String> problems = new ScenarioFolder(folder)
                .file("sites.csv", ScenarioFolder.SITES + "Shed,-20.1,-30.1,slurry,-12 kg/yr\n")
                .problems();
        assertThat(problems).hasSize(2);
        assertThat(problems).anySatisfy(p -> assertThat(p).startsWith("sites.csv:3 release: -12 kg/yr is not allowed"));
        assertThat(problems).anySatisfy(p -> assertThat(p).startsWith("sites.csv:3 name: \"Shed\" is there twice"));
    }

    @Test
    void unknownAndMissingColumns() {
        List<String> problems = new ScenarioFolder(folder)
                .file("sites.csv", "name,longitude,latitude,releese\nShed,-20.1,-30.1,1 kg/yr\n")
                .problems();
        assertThat(problems)
                .anySatisfy(p -> assertThat(p)
                        .isEqualTo("sites.csv:1 releese: is not a column here; the nearest known one is release"));
        assertThat(problems)
                .anySatisfy(p -> assertThat(p).isEqualTo("sites.csv:1 path: this column is missing; add it"));
    }

    @Test
    void aStateOutsideTheYearCannotReceiveAShare() {
        assertThat(new ScenarioFolder(folder)
                        .with("share-of-year: 0.6", "share-of-year: 1")
                        .with("share-of-year: 0.4", "share-of-year: 0")
                        .site("release,year_share_dry,year_share_wet", "12 kg/yr,0.9,0.1")
                        .problems())
                .singleElement()
                .asString()
                .contains("flow state wet, whose share-of-year is 0");
    }
}
