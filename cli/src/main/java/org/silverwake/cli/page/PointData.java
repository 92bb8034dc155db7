// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.geo.place.LocatedPoint;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.PointRequest;
import org.silverwake.geo.place.UnplacedPoint;

/** The points of the page: those without a place first, since they have to be seen to. */
final class PointData {
    private static final int CENTIMETERS = 2;
    private static final String PLACE = "place";
    private static final String SAMPLE = "sample";

    private final JsonGenerator json;
    private final double farthest;
    private final Map<String, List<PlaceUse>> uses = new HashMap<>();

    private PointData(ScenarioInput scenario, JsonGenerator json) {
        this.json = json;
        this.farthest = scenario.settings().value("places.snap-distance");
        scenario.places().forEach(place -> uses.put(place.name(), place.uses()));
    }

    static void write(ScenarioInput scenario, Basin basin, List<LocatedSample> samples, JsonGenerator json)
            throws IOException {
        PointData data = new PointData(scenario, json);
        json.writeArrayFieldStart("points");
        for (UnplacedPoint point : basin.unplaced()) {
            data.unplaced(point);
        }
        for (PlacedPoint point : basin.points()) {
            data.placed(point);
        }
        Set<String> taken = new HashSet<>();
        for (LocatedSample sample : samples) {
            if (sample.at().isPresent() && taken.add(sample.sample().name())) {
                data.sample(sample.sample(), sample.at().get());
            }
        }
        json.writeEndArray();
    }

    /** Several results of one sample are one point. */
    private void sample(Sample sample, LocatedPoint.OnReach at) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", SAMPLE);
        json.writeStringField("mark", SAMPLE);
        json.writeStringField("name", sample.name());
        json.writeStringField("where", sample.where());
        json.writeStringField("uses", "");
        PageData.number(json, "most", farthest, CENTIMETERS);
        PageData.degrees(json, "lon", at.longitude());
        PageData.degrees(json, "lat", at.latitude());
        json.writeEndObject();
    }

    private void unplaced(UnplacedPoint point) throws IOException {
        begin(point.request());
        PageData.degrees(json, "lon", point.longitude().orElse(Double.NaN));
        PageData.degrees(json, "lat", point.latitude().orElse(Double.NaN));
        json.writeStringField("reason", point.reason());
        json.writeEndObject();
    }

    private void placed(PlacedPoint point) throws IOException {
        begin(point.request());
        PageData.degrees(json, "lon", point.longitude());
        PageData.degrees(json, "lat", point.latitude());
        PageData.degrees(json, "snapLon", point.snappedLongitude());
        PageData.degrees(json, "snapLat", point.snappedLatitude());
        PageData.number(json, "distance", point.distanceMeters(), CENTIMETERS);
        PageData.number(json, "chainage", point.chainageMeters(), 0);
        json.writeNumberField("reach", point.headReach());
        json.writeEndObject();
    }

    private void begin(PointRequest request) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", request.kind());
        json.writeStringField("name", request.name());
        json.writeStringField("where", request.where());
        PageData.number(json, "most", request.maxDistanceMeters(), CENTIMETERS);
        if (request.riverName().isPresent()) {
            json.writeStringField("river", request.riverName().get());
        }
        List<PlaceUse> of = request.kind().equals(PLACE) ? uses.getOrDefault(request.name(), List.of()) : List.of();
        json.writeStringField("uses", Words.uses(of));
        json.writeStringField("mark", request.kind().equals(PLACE) ? mark(of) : request.kind());
    }

    /** The mark that maps give a place of these uses. */
    private static String mark(List<PlaceUse> uses) {
        if (uses.contains(PlaceUse.DRINKING_INTAKE) || uses.contains(PlaceUse.RIVERSIDE_WELL)) {
            return "intake";
        }
        if (uses.contains(PlaceUse.VILLAGE) || uses.contains(PlaceUse.SCHOOL)) {
            return "village";
        }
        return uses.contains(PlaceUse.FISHING) ? "fishing" : PLACE;
    }
}
