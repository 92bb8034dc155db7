// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.whatif.Contributor;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.geo.map.GroupArea;
import org.silverwake.geo.place.PlacedPoint;

/**
 * Where groups of sites lie, on public pages: the same coarse areas as on sheets, for the groups that go by a name of their own.
 * Groups that were put together, to hide that they are small, have none.
 */
final class GroupColumns {
    private static final double HUNDRED_THOUSAND = 1e5;

    private GroupColumns() {}

    static void write(DataJson json, Linear linear, Audience audience) throws IOException {
        json.raw().writeArrayFieldStart("groups");
        for (int k = 0; audience == Audience.PUBLIC && k < linear.contributors().size(); k++) {
            Optional<GroupArea> area =
                    area(linear.outcome(), linear.contributors().get(k));
            if (area.isPresent()) {
                json.raw().writeStartObject();
                json.raw().writeNumberField("contributor", k);
                ring(json, area.get().outline());
                json.raw().writeEndObject();
            }
        }
        json.raw().writeEndArray();
    }

    private static Optional<GroupArea> area(Outcome outcome, Contributor contributor) {
        if (!contributor.isGroupOf(outcome.scenario())) {
            return Optional.empty();
        }
        List<PlacedPoint> points = outcome.basin().points("site");
        return GroupArea.around(
                contributor.points().stream()
                        .map(points::get)
                        .map(point -> new GroupArea.Corner(point.longitude(), point.latitude()))
                        .toList(),
                outcome.basin().map());
    }

    private static void ring(DataJson json, List<GroupArea.Corner> outline) throws IOException {
        json.raw().writeArrayFieldStart("points");
        long x = 0;
        long y = 0;
        for (GroupArea.Corner corner : outline) {
            long east = Math.round(corner.longitude() * HUNDRED_THOUSAND);
            long north = Math.round(corner.latitude() * HUNDRED_THOUSAND);
            json.raw().writeNumber(east - x);
            json.raw().writeNumber(north - y);
            x = east;
            y = north;
        }
        json.raw().writeEndArray();
    }
}
