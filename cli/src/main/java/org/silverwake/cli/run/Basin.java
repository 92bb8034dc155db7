// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.CorrectionOutcome;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.assembly.NetworkCorrections;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.PointReader;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.geo.map.Ground;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.Placement;
import org.silverwake.geo.place.Placer;
import org.silverwake.geo.place.PointRequest;
import org.silverwake.geo.place.UnplacedPoint;
import org.silverwake.geo.place.WaterPolygons;
import org.silverwake.geo.terrain.ElevationModel;
import org.silverwake.geo.terrain.ReachHeights;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.ReachTable;

/**
 * The river as read, assembled and cut: steps 2 to 4 of the run.
 *
 * @param layer the layer
 * @param map the cut network with its geometry
 * @param network the same without coordinates, in downstream order
 * @param table what is known of each reach
 * @param waters kinds of reach, still waters and wetlands
 * @param points every point on it, in the order sites, places, gauges, abstractions
 * @param corrections what the user corrected, and what became of it
 * @param warnings one line each
 * @param unplaced points that found no place on it; always empty in a run
 * @param failure why the layer makes no network, so that lines are as drawn, neither joined nor directed; never in a run
 * @param ground what maps of it lie upon
 */
public record Basin(
        VectorLayer layer,
        RiverMap map,
        RiverNetwork network,
        ReachTable table,
        Waters waters,
        List<PlacedPoint> points,
        List<AppliedCorrection> corrections,
        List<String> warnings,
        List<UnplacedPoint> unplaced,
        Optional<String> failure,
        Ground ground) {
    private static final String SITE = "site";

    /**
     * Reads the layer, assembles it, places every point.
     *
     * @throws GeoDataException if the layer makes no network or a point finds no place on it
     */
    public static Basin of(ScenarioInput scenario) {
        return of(scenario, true);
    }

    /**
     * The same as far as it goes, for looking at: points without a place are kept apart, and where the layer makes no
     * network its lines are as drawn.
     *
     * @throws GeoDataException if the layer cannot be read at all
     */
    public static Basin forLookingAt(ScenarioInput scenario) {
        return of(scenario, false);
    }

    private static Basin of(ScenarioInput scenario, boolean strict) {
        GroundStep ground = new GroundStep(scenario);
        Basin basin;
        try {
            basin = of(scenario, strict, ground);
        } catch (GeoDataException e) {
            throw ground.with(e);
        }
        ground.require();
        return basin;
    }

    private static Basin of(ScenarioInput scenario, boolean strict, GroundStep ground) {
        ScenarioInput.Rivers rivers = scenario.rivers();
        VectorLayer layer = Layers.read(
                new LayerSource(rivers.file(), rivers.layer(), rivers.crs(), rivers.filter(), rivers.idColumn()));
        ground.read(layer);
        Optional<ElevationModel> elevation = rivers.elevation().map(e -> ElevationModel.read(e.file(), e.toMeters()));
        if (elevation.isPresent() && !ReachHeights.reach(layer, elevation.get())) {
            throw notCovered(rivers.elevation().orElseThrow().file());
        }
        CorrectionStep step = new CorrectionStep(scenario.corrections());
        AssemblyOptions options = options(layer, rivers, elevation).withCorrections(step.network());
        Assembled assembled = strict ? assembled(layer, options) : assembledOrDrawn(layer, options, step);
        step.heard(assembled.corrections());
        List<PointRequest> requests = step.moved(requests(scenario), layer.crs());
        step.moved(SampleStep.requests(scenario), layer.crs()); // they are put on the river later; here it is noted
        Optional<WaterPolygons> polygons = scenario.waterBodies().polygons().map(PolygonLayer::read);
        RiverMap whole = polygons.map(p -> p.cut(assembled.map)).orElse(assembled.map);
        Placement placement = Placer.placeWhereFound(whole, layer.crs(), requests);
        if (strict) {
            placement.requireAll();
        }
        List<String> warnings = new ArrayList<>(layer.warnings());
        warnings.addAll(placement.warnings());
        List<AppliedCorrection> corrections = step.applied();
        corrections.stream()
                .filter(correction -> !correction.isApplied())
                .forEach(correction -> warnings.add(correction.line()));
        RiverMap map = raised(placement, rivers.elevation(), elevation, warnings);
        RiverNetwork network = network(map);
        Waters waters = WaterBodyStep.find(scenario, map, network, polygons, placement.points());
        polygons.ifPresent(p -> warnings.addAll(p.warnings()));
        warnings.addAll(waters.notes());
        Ground lies = ground.under(map, elevation);
        warnings.addAll(ground.warnings());
        return new Basin(
                layer,
                map,
                network,
                table(map, network, waters),
                waters,
                placement.points(),
                corrections,
                List.copyOf(warnings),
                placement.unplaced(),
                assembled.failure,
                lies);
    }

    private record Assembled(RiverMap map, List<CorrectionOutcome> corrections, Optional<String> failure) {}

    private static Assembled assembled(VectorLayer layer, AssemblyOptions options) {
        Assembly.Corrected corrected = Assembly.corrected(layer, options);
        return new Assembled(corrected.map(), corrected.corrections(), Optional.empty());
    }

    private static Assembled assembledOrDrawn(VectorLayer layer, AssemblyOptions options, CorrectionStep step) {
        try {
            return assembled(layer, options);
        } catch (GeoDataException e) {
            RiverMap drawn = Assembly.asDrawn(layer, options).orElseThrow(() -> e);
            return new Assembled(drawn, step.untried("the layer makes no network"), Optional.of(e.getMessage()));
        }
    }

    /** With heights, and drainage areas where these shall come from the raster. */
    private static RiverMap raised(
            Placement placement,
            Optional<ScenarioInput.Elevation> source,
            Optional<ElevationModel> elevation,
            List<String> warnings) {
        if (elevation.isEmpty() || source.isEmpty()) {
            return placement.map();
        }
        RiverMap map = ReachHeights.sample(placement.map(), elevation.get());
        cover(map, source.get().file(), warnings);
        return source.get().drainageArea() ? RasterAreas.put(map, elevation.get(), placement.points(), warnings) : map;
    }

    /** An elevation raster that misses the river is a mistake; one that misses some of it is told. */
    private static void cover(RiverMap map, Path file, List<String> warnings) {
        long missing = map.reaches().stream()
                .filter(r -> !r.numbers().containsKey(ReachHeights.UPPER)
                        || !r.numbers().containsKey(ReachHeights.LOWER))
                .count();
        if (missing == map.reachCount()) {
            throw notCovered(file);
        }
        if (missing > 0) {
            warnings.add(file.getFileName() + ": has no height at an end of " + missing + " of " + map.reachCount()
                    + " reaches; their slope is taken otherwise where that is possible");
        }
    }

    private static GeoDataException notCovered(Path file) {
        return new GeoDataException(file.getFileName()
                + ": has no height at any reach of the river layer; give a raster that covers it and whose coordinate"
                + " system is right, or leave rivers.elevation out");
    }

    private static AssemblyOptions options(
            VectorLayer layer, ScenarioInput.Rivers rivers, Optional<ElevationModel> elevation) {
        List<AssemblyOptions.ColumnMapping> columns = new ArrayList<>();
        for (ScenarioInput.Column column : rivers.columns()) {
            columns.add(
                    new AssemblyOptions.ColumnMapping(column.key(), column.column(), column.toSi(), column.missing()));
        }
        List<AssemblyOptions.Outlet> outlets = new ArrayList<>();
        for (ScenarioInput.Outlet outlet : rivers.outlets()) {
            outlets.add(outlet(layer, outlet));
        }
        return new AssemblyOptions(
                rivers.snapToleranceMeters(),
                rivers.nameColumn(),
                columns,
                outlets,
                rivers.orientBy().stream().map(AssemblyOptions.Criterion::of).toList(),
                elevation.map(model -> model),
                NetworkCorrections.none());
    }

    static AssemblyOptions.Outlet outlet(VectorLayer layer, ScenarioInput.Outlet outlet) {
        if (outlet.position().isEmpty()) {
            return AssemblyOptions.Outlet.ofFeature(outlet.feature().orElseThrow());
        }
        ScenarioInput.Position at = outlet.position().get();
        PointReader.Fix fix = new PointReader(layer.crs()).read(at.system(), at.x(), at.y());
        return AssemblyOptions.Outlet.ofPoint(fix.longitude(), fix.latitude());
    }

    private static List<PointRequest> requests(ScenarioInput scenario) {
        double siteDistance = scenario.settings().value("sites.snap-distance");
        double placeDistance = scenario.settings().value("places.snap-distance");
        List<PointRequest> requests = new ArrayList<>();
        for (ScenarioInput.Site site : scenario.sites()) {
            requests.add(request(SITE, site.name(), site.where(), site.position(), siteDistance, site.riverName()));
        }
        for (ScenarioInput.Place place : scenario.places()) {
            requests.add(
                    request("place", place.name(), place.where(), place.position(), placeDistance, Optional.empty()));
        }
        for (ScenarioInput.Gauge gauge : scenario.gauges()) {
            requests.add(
                    request("gauge", gauge.name(), gauge.where(), gauge.position(), placeDistance, Optional.empty()));
        }
        for (ScenarioInput.Abstraction abstraction : scenario.abstractions()) {
            requests.add(request(
                    "abstraction",
                    abstraction.name(),
                    abstraction.where(),
                    abstraction.position(),
                    placeDistance,
                    Optional.empty()));
        }
        return requests;
    }

    static PointRequest request(
            String kind,
            String name,
            String where,
            ScenarioInput.Position at,
            double distance,
            Optional<String> river) {
        return new PointRequest(kind, name, where, at.x(), at.y(), at.system(), at.accuracy(), distance, river);
    }

    static RiverNetwork network(RiverMap map) {
        int[] from = new int[map.reachCount()];
        int[] to = new int[map.reachCount()];
        for (int i = 0; i < from.length; i++) {
            from[i] = map.reach(i).fromNode();
            to[i] = map.reach(i).toNode();
        }
        return RiverNetwork.of(map.ids(), from, to);
    }

    private static ReachTable table(RiverMap map, RiverNetwork network, Waters waters) {
        int n = map.reachCount();
        double[] length = new double[n];
        int[] group = new int[n];
        Map<Long, Integer> groups = new HashMap<>();
        Map<String, Column> columns = new HashMap<>();
        for (int r = 0; r < n; r++) {
            RiverMap.Reach reach = map.reach(network.inputIndex(r));
            length[r] = reach.lengthMeters();
            long key = ((long) reach.part().feature() << Integer.SIZE)
                    + reach.part().part();
            group[r] = groups.computeIfAbsent(key, k -> groups.size());
            for (Map.Entry<String, Double> number : reach.numbers().entrySet()) {
                columns.computeIfAbsent(number.getKey(), k -> new Column(n)).put(r, number.getValue());
            }
        }
        return new ReachTable(network, length, group, columns, waters.kinds(), waters.bodies());
    }

    /** The map's reach for a reach of the network. */
    public RiverMap.Reach reach(int r) {
        return map.reach(network.inputIndex(r));
    }

    /** The same basin with further defects. */
    Basin withDefects(List<Defect> further) {
        return new Basin(
                layer,
                map.withDefects(further),
                network,
                table,
                waters,
                points,
                corrections,
                warnings,
                unplaced,
                failure,
                ground);
    }

    /** The reach of the network that begins at a point. */
    public int reachAt(PlacedPoint point) {
        return network.reachOfInput(point.headReach());
    }

    /**
     * The reach at whose head a site enters; one of several discharge points of a row enters where its row does.
     *
     * @throws IllegalStateException if its row is none of the scenario's sites
     */
    public int reachOf(ScenarioInput.Site site) {
        return reachAt(points(SITE).stream()
                .filter(point -> (point.request().where() + CorrectionStep.MOVED)
                        .startsWith(site.where() + CorrectionStep.MOVED))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no point of site " + site.name())));
    }

    /**
     * The reach at whose head the water of an abstraction is taken. What is taken from still water is water like that which
     * flows out of it, so it is taken from the reach below, where there is one.
     */
    public int takenAt(PlacedPoint abstraction) {
        int reach = reachAt(abstraction);
        int at = reach;
        while (waters.bodies().isStill(at)) {
            int node = network.toNode(at);
            if (network.outCount(node) == 0) {
                return reach;
            }
            int next = network.out(node, 0);
            for (int k = 1; k < network.outCount(node); k++) {
                next = waters.bodies().isStill(next) ? next : network.out(node, k);
            }
            at = next;
        }
        return at;
    }

    /** Points of a kind (site, place, gauge, abstraction), in the scenario's order. */
    public List<PlacedPoint> points(String kind) {
        return points.stream().filter(p -> p.request().kind().equals(kind)).toList();
    }
}
