// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.geo.crs.PointSystem;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.input.Settings;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.water.ReachKind;

/**
 * Everything one run is told, checked for form, in SI units (m, s, kg, K stays degC only in temperature). Every list
 * "by state" has one entry per flow state, in their order. Files are resolved against the folder, except in
 * {@link SourceFile}. Both doors (text and, later, workbook) end here.
 */
public record ScenarioInput(
        Path folder,
        Project project,
        Rivers rivers,
        List<FlowState> states,
        Discharge discharge,
        Channel channel,
        Solids solids,
        Mercury mercury,
        Optional<Bed> bed,
        Optional<HistoryPlan> history,
        Optional<Fish> fish,
        Background background,
        Settings settings,
        List<Site> sites,
        FieldNotesPlan fieldNotes,
        List<Place> places,
        List<Gauge> gauges,
        List<Abstraction> abstractions,
        List<Sample> samples,
        WaterBodyPlan waterBodies,
        List<ReachClass> reachClasses,
        Corrections corrections,
        Guidelines guidelines,
        Outputs outputs,
        Map<String, String> localUnits,
        List<SourceFile> sourceFiles,
        List<String> warnings) {
    /** Copies the lists. */
    public ScenarioInput {
        states = List.copyOf(states);
        sites = List.copyOf(sites);
        places = List.copyOf(places);
        gauges = List.copyOf(gauges);
        abstractions = List.copyOf(abstractions);
        samples = List.copyOf(samples);
        reachClasses = List.copyOf(reachClasses);
        localUnits = Collections.unmodifiableMap(new LinkedHashMap<>(localUnits));
        sourceFiles = List.copyOf(sourceFiles);
        warnings = List.copyOf(warnings);
    }

    /** The same with other discharge points and whatever the water and the bed make of them. */
    public ScenarioInput withSites(List<Site> others) {
        return with(others, outputs);
    }

    /** The same with sheets and page for everybody, whatever it said. */
    public ScenarioInput forEverybody() {
        return with(sites, outputs.forEverybody());
    }

    private ScenarioInput with(List<Site> others, Outputs shown) {
        return new ScenarioInput(
                folder,
                project,
                rivers,
                states,
                discharge,
                channel,
                solids,
                mercury,
                bed,
                history,
                fish,
                background,
                settings,
                others,
                fieldNotes,
                places,
                gauges,
                abstractions,
                samples,
                waterBodies,
                reachClasses,
                corrections,
                guidelines,
                shown,
                localUnits,
                sourceFiles,
                warnings);
    }

    /** Title, maker and date of the work; the date is written on maps in place of the clock's. */
    public record Project(String title, String preparedBy, LocalDate date, String language) {}

    /** A file that was read, as the scenario names it (relative to its folder), for the record of the run. */
    public record SourceFile(String role, Path file) {}

    /** The river layer and how to read it. */
    public record Rivers(
            Path file,
            Optional<String> layer,
            Optional<String> crs,
            Optional<String> filter,
            Optional<String> idColumn,
            Optional<String> nameColumn,
            List<Column> columns,
            Optional<Elevation> elevation,
            double snapToleranceMeters,
            List<Outlet> outlets,
            List<String> orientBy,
            Map<String, ReachKind> kinds) {
        /** Copies the collections. */
        public Rivers {
            columns = List.copyOf(columns);
            outlets = List.copyOf(outlets);
            orientBy = List.copyOf(orientBy);
            kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
        }
    }

    /**
     * One mapped column. {@code key} is one of drainage-area, local-area, slope, velocity, depth, width, split, kind, water-body, water-body-area, water-body-depth,
     * elevation-upper, elevation-lower, discharge, headwater-discharge, manning-n; per flow state the key is followed by a dot and
     * the state's name (discharge.dry). A number is multiplied by {@code toSi}; text values are kept for kind and water-body alone.
     */
    public record Column(String key, String column, double toSi, List<String> missing) {
        /** Copies the lists. */
        public Column {
            missing = List.copyOf(missing);
        }
    }

    /** Elevation raster; heights are multiplied by {@code toMeters}; {@code drainageArea} where areas are taken from it. */
    public record Elevation(Path file, double toMeters, boolean drainageArea) {}

    /** A named outlet: a feature id, or a point in degrees. Its basin area [m2], if given. */
    public record Outlet(Optional<String> feature, Optional<Position> position, OptionalDouble basinArea) {}

    /**
     * A point as the user gave it: x (longitude, easting) and y in its system, and how far off it may be [m], if stated.
     */
    public record Position(double x, double y, PointSystem system, OptionalDouble accuracy) {
        /** In WGS 84 degrees, longitude first, or in the layer's system. */
        public Position(double x, double y, boolean inLayerCrs) {
            this(x, y, inLayerCrs ? PointSystem.layer() : PointSystem.wgs84(), OptionalDouble.empty());
        }

        /** Whether x and y are in the layer's own system. */
        public boolean inLayerCrs() {
            return system.kind() == PointSystem.Kind.LAYER;
        }
    }

    /**
     * A flow state. Share of the year [-], temperature [degC], suspended sediment [kg/m3] or a rating a Q^b (a in
     * kg/m3 at 1 m3/s), filtered mercury of lateral inflow [kg/m3], dissolved organic carbon [kg/m3]. Months, 1 to 12, in
     * which a sample's date means this state; none where dates say nothing.
     */
    public record FlowState(
            String name,
            double share,
            double temperature,
            OptionalDouble suspendedSediment,
            Optional<Rating> rating,
            double lateralFilteredMercury,
            OptionalDouble dissolvedOrganicCarbon,
            boolean flood,
            List<Integer> months) {
        /** Copies the list. */
        public FlowState {
            months = List.copyOf(months);
        }
    }

    /** Suspended sediment a Q^b, a in kg/m3 at 1 m3/s, b [-]. */
    public record Rating(double a, double b) {}

    /** How discharge is found. Lists are by state and empty where the method does not use them. */
    public record Discharge(
            Method method,
            List<Double> specificDischarge,
            double areaExponent,
            List<Double> headwaterDischarge,
            List<Double> lateralPerLength) {
        /** Copies the lists. */
        public Discharge {
            specificDischarge = List.copyOf(specificDischarge);
            headwaterDischarge = List.copyOf(headwaterDischarge);
            lateralPerLength = List.copyOf(lateralPerLength);
        }

        /** The four ways. specific [m/s], headwater [m3/s], lateral [m2/s]. */
        public enum Method {
            ATTRIBUTE,
            SPECIFIC_DISCHARGE,
            GAUGES,
            HEADWATERS
        }
    }

    /** How width and depth are found. */
    public record Channel(Method method) {
        /** The three ways; coefficients are settings. */
        public enum Method {
            HYDRAULIC_GEOMETRY,
            MANNING,
            ATTRIBUTE
        }
    }

    /** Particle classes in their order. */
    public record Solids(List<SolidsClass> classes) {
        /** Copies the lists. */
        public Solids {
            classes = List.copyOf(classes);
        }
    }

    /**
     * A particle class. Diameter [m], density [kg/m3], settling law ferguson-church, stokes or measured (then
     * settlingVelocity [m/s]), cohesive or sand, critical shear for deposition and erosion [Pa], log10 Kd of Hg(II) and of
     * MeHg [L/kg], retention length [m], shares of background and tailings solids [-].
     */
    public record SolidsClass(
            String name,
            double diameter,
            double density,
            String law,
            OptionalDouble settlingVelocity,
            boolean cohesive,
            double criticalShearDeposition,
            double log10Kd,
            double methylLog10Kd,
            OptionalDouble retentionLength,
            double backgroundShare,
            double tailingsShare) {}

    /**
     * What the partition coefficient refers to (dissolved organic carbon acts only where it is free), the further forms that are
     * carried, and the size classes of droplets.
     */
    public record Mercury(Basis basis, Set<FurtherForm> forms, List<DropletClass> droplets) {
        /** Copies the collections; forms in the order of their constants. */
        public Mercury {
            Set<FurtherForm> ordered = EnumSet.noneOf(FurtherForm.class);
            ordered.addAll(forms);
            forms = Collections.unmodifiableSet(ordered);
            droplets = List.copyOf(droplets);
        }

        /** Substances that its water carries. */
        public Set<Substance> substances() {
            Set<Substance> carried = EnumSet.copyOf(Substance.always());
            if (forms.contains(FurtherForm.METHYL)) {
                carried.add(Substance.METHYLMERCURY);
            }
            return carried;
        }

        /** Filtered: ratio to filtered mercury, as in field data. Free: ratio to what organic carbon leaves unbound. */
        public enum Basis {
            FILTERED,
            FREE
        }
    }

    /** A form of mercury that is carried beside Hg(II), exchangeable or locked in grains. */
    public enum FurtherForm {
        ELEMENTAL,
        METHYL,
        COMPLEX,
        DROPLETS
    }

    /** A size class of droplets: diameter [m], share of all droplets [-]. */
    public record DropletClass(String name, double diameter, double share) {}

    /** The bed that all flow states share: whether erosion is given rather than burial. Its numbers are settings. */
    public record Bed(boolean erosionGiven) {}

    /**
     * Years to go through: the first, how many, the order of flow states in a year (empty where they are taken together), the
     * bed's content in the beginning [kg/kg], and changes of what sites release, by year.
     */
    public record HistoryPlan(
            int firstYear, int years, List<Integer> order, OptionalDouble bedContent, List<Change> changes) {
        /** Copies the lists. */
        public HistoryPlan {
            order = List.copyOf(order);
            changes = List.copyOf(changes);
        }
    }

    /** From a year on, the sites named (or of the groups named; all where none is) release so many times what is stated. */
    public record Change(String name, int year, double factor, List<String> sites) {
        /** Copies the list. */
        public Change {
            sites = List.copyOf(sites);
        }

        /** Whether it holds for a site. */
        public boolean holdsFor(Site site) {
            return sites.isEmpty() || sites.contains(site.name()) || sites.contains(site.group());
        }
    }

    /** Fish: levels by species (small letters), features with a dam at their lower end, whether their methylmercury is carried. */
    public record Fish(Map<String, TrophicLevel> species, List<String> dams, boolean isMethylCarried) {
        /** Copies map and list. */
        public Fish {
            dams = List.copyOf(dams);
            species = Collections.unmodifiableMap(new TreeMap<>(species));
        }

        /** Level of a species, as a laboratory names it. */
        public Optional<TrophicLevel> level(String name) {
            return Optional.ofNullable(species.get(name.toLowerCase(Locale.ROOT).strip()));
        }
    }

    /** Mercury that is there without the sites: content of river solids [kg/kg]. */
    public record Background(double solidsContent) {}

    /**
     * A discharge point. Exactly one of the three ways is present; each list is by state, in SI: mercury [kg/s], dry tailings [kg/s]
     * with content [kg/kg], effluent [m3/s] with concentration [kg/m3]. WAD cyanide [kg/s], also by state, is empty where it is not
     * known. The exchangeable share [-] is empty where it is not known, and is a share of what is in no further form; further
     * shares [-] are those stated, of all its mercury; class shares [-] are by solids class, of grain-bound mercury and of
     * tailings solids. Water [m3/s] is by state all the water the site adds to the river, effluent included.
     */
    public record Site(
            String where,
            String name,
            String group,
            Position position,
            ReleasePath path,
            Optional<List<Double>> mercury,
            Optional<Tailings> tailings,
            Optional<Effluent> effluent,
            Optional<List<Double>> cyanide,
            OptionalDouble exchangeableShare,
            Map<FurtherForm, Double> furtherShares,
            List<Double> classShares,
            List<Double> water,
            Outfall outfall,
            Optional<String> riverName,
            String note) {
        /** Copies the lists. */
        public Site {
            mercury = mercury.map(List::copyOf);
            cyanide = cyanide.map(List::copyOf);
            furtherShares = Collections.unmodifiableMap(new TreeMap<>(furtherShares));
            classShares = List.copyOf(classShares);
            water = List.copyOf(water);
        }
    }

    /** The path by which mercury leaves a site; by erosion of heaps and ground and by runoff only where field notes say so. */
    public enum ReleasePath {
        SLURRY,
        LEACH_TANK,
        SEEPAGE,
        EROSION,
        RUNOFF
    }

    /** Where in the cross-section an outfall enters. */
    public enum Outfall {
        BANK,
        MID_CHANNEL
    }

    /** Dry tailings [kg/s] by state and their mercury content [kg/kg]. */
    public record Tailings(List<Double> mass, double content) {
        /** Copies the lists. */
        public Tailings {
            mass = List.copyOf(mass);
        }
    }

    /** Effluent [m3/s] by state and its mercury concentration [kg/m3]. */
    public record Effluent(List<Double> flow, double concentration) {
        /** Copies the lists. */
        public Effluent {
            flow = List.copyOf(flow);
        }
    }

    /**
     * A receptor: village, intake, fishing ground ... with its uses and the people who depend on it. People are empty where
     * nobody knows how many; their source says where the number comes from, "" where that is not told.
     */
    public record Place(
            String where,
            String name,
            List<PlaceUse> uses,
            OptionalInt people,
            String peopleSource,
            Position position,
            String note) {
        /** Copies the lists. */
        public Place {
            uses = List.copyOf(uses);
        }
    }

    /** What a place is used for. */
    public enum PlaceUse {
        VILLAGE,
        DRINKING_INTAKE,
        RIVERSIDE_WELL,
        FISHING,
        IRRIGATION,
        LIVESTOCK,
        BATHING,
        SCHOOL
    }

    /** A gauge and its discharge [m3/s] by state. */
    public record Gauge(String where, String name, Position position, List<Double> discharge) {
        /** Copies the lists. */
        public Gauge {
            discharge = List.copyOf(discharge);
        }
    }

    /** A declared abstraction [m3/s] by state, and the field it waters, if it waters one of known area. */
    public record Abstraction(
            String where, String name, Position position, List<Double> discharge, String use, Optional<Field> field) {
        /** Copies the lists. */
        public Abstraction {
            discharge = List.copyOf(discharge);
        }
    }

    /** Watered land: area [m2], depth to which it is ploughed [m], bulk density of its dry soil [kg/m3]. */
    public record Field(double area, double ploughDepth, double soilDensity) {}

    /** Guideline values by id, by jurisdiction, and from a user's own table. */
    public record Guidelines(List<String> ids, Optional<String> jurisdiction, Optional<Path> ownTable) {
        /** Copies the lists. */
        public Guidelines {
            ids = List.copyOf(ids);
        }
    }
}
