// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.List;

/** What remains to be listed once directions are known: turned lines, uphill reaches, isolated parts. */
final class FinalChecks {
    /** Rises below this are rounding in columns, noise in rasters [m]. */
    private static final double RISE = 0.01;

    private static final double MEASURED_RISE = 1;

    private final Net net;
    private final Orientation orientation;
    private final DefectLog log;

    private FinalChecks(Net net, Orientation orientation, DefectLog log) {
        this.net = net;
        this.orientation = orientation;
        this.log = log;
    }

    static void list(Net net, Orientation orientation, AssemblyOptions options, DefectLog log) {
        FinalChecks checks = new FinalChecks(net, orientation, log);
        checks.turned();
        checks.uphill();
        checks.isolated();
        Loops.list(net, log);
        Gaps.list(net, options.snapToleranceMeters(), log);
        Crossings.list(net, options.snapToleranceMeters(), log);
    }

    private void turned() {
        boolean whole = orientation.isReversed();
        if (whole) {
            log.repaired(
                    Defect.Kind.LAYER_REVERSED,
                    net.line(0).middle(),
                    List.of(),
                    reversedText(net, orientation),
                    "turned");
        }
        for (int i = 0; i < net.size(); i++) {
            if (orientation.isFlipped(i) != whole) {
                one(i, whole);
            }
            if (orientation.areaVote(i) < 0) {
                log.open(
                        Defect.Kind.FLIPPED_LINE,
                        net.line(i).middle(),
                        List.of(net.line(i).featureId),
                        feature(i) + " flows to a smaller drainage area",
                        "see whether it is drawn the wrong way or its area is wrong");
            }
        }
    }

    /** "27 of 30 lines are drawn from mouth to source". */
    static String reversedText(Net net, Orientation orientation) {
        return orientation.turned() + " of " + net.size() + " lines are drawn from mouth to source";
    }

    private void one(int i, boolean whole) {
        Line line = net.line(i);
        if (orientation.forced().isForced(i)) {
            log.corrected(
                    Defect.Kind.FLIPPED_LINE,
                    line.middle(),
                    List.of(line.featureId),
                    feature(i) + (whole ? " runs as drawn, unlike nearly all others" : " runs against its drawing"),
                    "so told by " + orientation.forced().by(i));
            return;
        }
        log.repaired(
                Defect.Kind.FLIPPED_LINE,
                line.middle(),
                List.of(line.featureId),
                whole
                        ? feature(i) + " is drawn downstream, unlike nearly all others"
                        : feature(i) + " is drawn upstream: " + reason(i),
                whole ? "kept as drawn" : "turned");
    }

    private String reason(int i) {
        if (orientation.isSure(i)) {
            return "the named outlet lies the other way";
        }
        if (orientation.drop(i) > 0) {
            return "the ground falls " + DefectLog.meters(orientation.drop(i)) + " the other way";
        }
        if (orientation.areaVote(i) > 0) {
            return "drainage areas rise the other way";
        }
        return "the lines it joins flow the other way";
    }

    private String feature(int i) {
        Line line = net.line(i);
        boolean whole = line.length() >= net.partLength(line);
        return "feature " + line.featureId
                + (whole ? "" : " from " + DefectLog.meters(line.from) + " to " + DefectLog.meters(line.to));
    }

    private void uphill() {
        for (int i = 0; i < net.size(); i++) {
            double rise = -orientation.drop(i);
            if (rise > (orientation.isMeasured(i) ? MEASURED_RISE : RISE)) {
                log.open(
                        Defect.Kind.UPHILL_REACH,
                        net.line(i).middle(),
                        List.of(net.line(i).featureId),
                        feature(i) + " rises " + DefectLog.meters(rise) + " in "
                                + DefectLog.meters(net.line(i).length())
                                + (orientation.isMeasured(i) ? " by the elevation raster" : " by its columns"),
                        "its slope is taken from its neighbors; correct the heights or the direction if you can");
            }
        }
    }

    private void isolated() {
        int[] component = net.components();
        List<List<Integer>> parts = new ArrayList<>();
        for (int i = 0; i < net.size(); i++) {
            int c = component[net.line(i).startNode];
            while (parts.size() <= c) {
                parts.add(new ArrayList<>());
            }
            parts.get(c).add(i);
        }
        int largest = 0;
        for (int c = 1; c < parts.size(); c++) {
            largest = parts.get(c).size() > parts.get(largest).size() ? c : largest;
        }
        for (int c = 0; c < parts.size(); c++) {
            if (c != largest) {
                List<Integer> part = parts.get(c);
                double length =
                        part.stream().mapToDouble(i -> net.line(i).length()).sum();
                log.open(
                        Defect.Kind.ISOLATED_PART,
                        net.line(part.get(0)).middle(),
                        net.featureIds(part),
                        part.size() + (part.size() == 1 ? " line, " : " lines, ") + DefectLog.meters(length)
                                + ", hang together but not with the largest part",
                        "nothing is carried from or to it; join it in the layer if water flows there");
            }
        }
    }
}
