// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.List;
import java.util.Locale;
import org.silverwake.cli.demo.Plane.Spot;

/** Sites and places of the demo, set beside their reaches, as CSV text. All invented. */
final class LanternTables {
    private static final String SITE_COLUMNS = "name,group,longitude,latitude,path,tailings,"
            + "tailings_unit,content,content_unit,effluent,effluent_unit,concentration,concentration_unit,"
            + "exchangeable_share,year_share_dry,year_share_wet,year_share_flood,water,water_unit,outfall,note";

    private final List<Reach> reaches;

    LanternTables(List<Reach> reaches) {
        this.reaches = List.copyOf(reaches);
    }

    /** sites.csv: three groups of sheds, a leach-tank yard. The tailings pond stands in scenario.yaml. */
    String sites() {
        return SITE_COLUMNS + "\n"
                // Upper Lamp: on the main stem's head reach and the next
                + shed("Sconce sheds", "Upper Lamp", "L021", 0.45, 0.15, 900, 22, "0.15", ",,", 0.4, "twelve drums")
                + shed("Wickmill sheds", "Upper Lamp", "L021", 0.75, -0.12, 600, 35, "0.15", ",,", 0.3, "nine drums")
                + shed(
                        "Pestle House",
                        "Upper Lamp",
                        "L020",
                        0.30,
                        0.1,
                        350,
                        48,
                        "",
                        ",,",
                        0.2,
                        "five drums; split of mercury not known")
                // Quinquet Hill: on a tributary of the northern branch
                + shed("Quinquet mill", "Quinquet Hill", "L052", 0.50, 0.1, 1400, 12, "0.1", ",,", 0.6, "one ball mill")
                + shed(
                        "Two Lamps sheds",
                        "Quinquet Hill",
                        "L034",
                        0.35,
                        -0.2,
                        500,
                        18,
                        "",
                        ",,",
                        0.25,
                        "eight drums; split of mercury not known")
                // Mantle Flats: small and seasonal, worked mostly in the wet season
                + shed(
                        "Mantle sheds",
                        "Mantle Flats",
                        "L074",
                        0.40,
                        0.1,
                        160,
                        9,
                        "0.2",
                        "0.2,0.75,0.05",
                        0.1,
                        "three drums; worked mostly in the wet season")
                + shed(
                        "Chimney sheds",
                        "Mantle Flats",
                        "L075",
                        0.55,
                        -0.1,
                        220,
                        6,
                        "0.2",
                        "0.2,0.75,0.05",
                        0.1,
                        "four drums; worked mostly in the wet season")
                + row(
                        "Girandole tanks",
                        "Girandole yard",
                        "L042",
                        0.60,
                        0.15,
                        "leach-tank",
                        ",,,,0.3,L/s,400,ug/L",
                        "1",
                        ",,",
                        ",",
                        "leach-tank yard; cyanide not given");
    }

    /** places.csv: villages down the rivers, an intake, a fishing ground. */
    String places() {
        return "name,use,people,people_source,longitude,latitude,note\n"
                + place("Tallowby", "village", "420", "L021", 0.30, 0.3, "upstream of all sheds on the main stem")
                + place("Emberfold", "village;bathing", "680", "L020", 0.70, -0.25, "")
                + place("Candelhas Novas", "village;school", "1150", "L018", 0.50, 0.3, "")
                + place("Ljóskelda", "village", "240", "L075", 0.85, 0.2, "")
                + place("Mwangurobe", "village;irrigation", "1900", "L014", 0.50, -0.3, "")
                + place("Sulurenda", "village;livestock", "760", "L034", 0.75, 0.25, "")
                + place("Pavío Alto", "village", "330", "L045", 0.40, 0.2, "no sheds above")
                + place("Bec-Quinquet", "village;riverside well", "1420", "L031", 0.60, 0.25, "")
                + place("Pelitarra", "village", "890", "L058", 0.60, 0.3, "no sheds above")
                + place("Lucernhaven", "village", "5200", "L004", 0.60, 0.35, "market town")
                + place(
                        "Glimmer Weir intake",
                        "drinking intake",
                        "0",
                        "L004",
                        0.45,
                        -0.08,
                        "raw water of Lucernhaven; its people are counted there")
                + place("The Gloaming", "fishing", "", "L003", 0.50, -0.1, "fishing ground of the lower river");
    }

    /** abstractions.csv: one canal, which runs when it does not rain. */
    String abstractions() {
        return "name,use,longitude,latitude,discharge_dry,discharge_wet,discharge_flood,discharge_unit,area,area_unit,note\n"
                + String.join(
                        ",",
                        "Mwangurobe canal",
                        "irrigation",
                        position("L014", 0.40, -0.05),
                        "60,25,0,L/s,80,ha",
                        "rice and vegetables; closed in floods")
                + "\n";
    }

    /** lab.csv: what an invented laboratory sent. One row is refused, one is a blank, one is of a fish. */
    String samples() {
        return "code,station,longitude,latitude,sampled,state,matrix,analyte,fraction,result,unit,limit,limit unit,kind,species,length,remarks\n"
                + water("W-01", "Tallowby", "L021", 0.30, "2026-06-09", "dry", "total", "ND", "ng/L", "2", "")
                + water("W-02", "Emberfold", "L020", 0.72, "2026-06-09", "dry", "total", "1250", "ng/L", "2", "")
                + water(
                        "W-03",
                        "Candelhas Novas",
                        "L018",
                        0.52,
                        "2026-01-20",
                        "wet",
                        "total",
                        "0.41",
                        "ug/L",
                        "0.01",
                        "turbid")
                + water("W-04", "Mwangurobe", "L014", 0.48, "2026-06-10", "dry", "total", "95", "ng/L", "2", "")
                + water("W-05", "Sulurenda", "L034", 0.78, "2026-06-11", "dry", "total", "1.9", "µg/l", "0.01", "")
                + water(
                        "W-06",
                        "Ljóskelda",
                        "L075",
                        0.87,
                        "2026-06-11",
                        "dry",
                        "total",
                        "<50",
                        "ng/L",
                        "50",
                        "other laboratory")
                + water("W-12", "Ljóskelda", "L075", 0.87, "2026-06-25", "dry", "total", "31", "ng/L", "2", "")
                + water("W-07", "Pelitarra", "L058", 0.58, "2026-06-12", "dry", "total", "< 0.5", "ng/L", "0.5", "")
                + water("W-08", "Glimmer Weir", "L004", 0.44, "2026-06-12", "dry", "total", "74", "ng/L", "2", "")
                + water(
                        "W-09",
                        "Glimmer Weir",
                        "L004",
                        0.44,
                        "2026-06-12",
                        "dry",
                        "dissolved",
                        "2.1",
                        "ng/L",
                        "0.5",
                        "")
                + water("W-10", "Bec-Quinquet", "L031", 0.60, "03/06/2026", "dry", "total", "160", "ng/L", "2", "")
                + water("W-11", "Glimmer Weir", "L004", 0.44, "2026-06-12", "dry", "total", "<2", "ng/L", "2", "")
                        .replace(",sample,", ",field blank,")
                + sediment("S-01", "Emberfold", "L020", 0.72, "3.4")
                + sediment("S-02", "Mwangurobe", "L014", 0.48, "0.48")
                + sediment("S-03", "Pavío Alto", "L045", 0.40, "0.09")
                + sample(
                        "F-01",
                        "The Gloaming",
                        "L003",
                        0.50,
                        "2026-06-13,,fish,Hg-T,,0.42,mg/kg ww,0.02,mg/kg ww,sample,lamp perch,310 mm,");
    }

    private String water(
            String code,
            String station,
            String reach,
            double along,
            String date,
            String state,
            String fraction,
            String result,
            String unit,
            String limit,
            String remark) {
        return sample(
                code,
                station,
                reach,
                along,
                String.join(
                        ",", date, state, "river water,Hg-T", fraction, result, unit, limit, unit, "sample,,", remark));
    }

    private String sediment(String code, String station, String reach, double along, String result) {
        return sample(
                code,
                station,
                reach,
                along,
                "2026-06-10,,sediment,Hg-T,," + result + ",mg/kg dw,0.01,mg/kg dw,sample,,,");
    }

    private String sample(String code, String station, String reach, double along, String rest) {
        return String.join(",", code, station, position(reach, along, 0.04), rest) + "\n";
    }

    private String shed(
            String name,
            String group,
            String reach,
            double along,
            double off,
            int tonnes,
            int content,
            String exchangeable,
            String yearShares,
            double water,
            String note) {
        return row(
                name,
                group,
                reach,
                along,
                off,
                "slurry",
                tonnes + ",t/yr," + content + ",mg/kg,,,,",
                exchangeable,
                yearShares,
                water + ",L/s",
                note);
    }

    private String row(
            String name,
            String group,
            String reach,
            double along,
            double off,
            String path,
            String amounts,
            String exchangeable,
            String yearShares,
            String water,
            String note) {
        return String.join(
                        ",",
                        name,
                        group,
                        position(reach, along, off),
                        path,
                        amounts,
                        exchangeable,
                        yearShares,
                        water,
                        "bank",
                        note)
                + "\n";
    }

    private String place(String name, String use, String people, String reach, double along, double off, String note) {
        String source = people.isEmpty() || people.equals("0") ? "" : "district roll 2025 (invented)";
        return String.join(",", name, use, people, source, position(reach, along, off), note) + "\n";
    }

    /** A place a share of the way down a reach and some km to its left (negative: right), to 0.0001 degrees. */
    private String position(String id, double along, double off) {
        Reach reach =
                reaches.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
        List<Spot> line = Meander.resample(reach.line(), 0.02);
        int k = Math.min(line.size() - 2, Math.max(1, (int) (along * (line.size() - 1))));
        Spot a = line.get(k - 1);
        Spot b = line.get(k + 1);
        double share = off / a.distance(b);
        Spot spot = line.get(k).plus(-(b.y() - a.y()) * share, (b.x() - a.x()) * share);
        return String.format(Locale.ROOT, "%.4f,%.4f", spot.longitude(), spot.latitude());
    }
}
