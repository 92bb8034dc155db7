// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.Ruling;
import org.silverwake.geo.crs.Ground;

/** The user's verdicts on defects, and which of them met one. */
final class Rulings {
    /** A defect is found again within this distance [m]. */
    static final double NEAR = 10;

    private record Place(Set<String> ids, List<Coordinate> at) {}

    private final List<Ruling> rulings;
    private final Map<String, CorrectionOutcome> outcomes = new LinkedHashMap<>();
    private final List<Place> refused = new ArrayList<>();

    Rulings(List<Ruling> rulings) {
        this.rulings = rulings;
    }

    boolean isEmpty() {
        return rulings.isEmpty();
    }

    /** The verdict of this sort on a defect that lies at one of these places. */
    Optional<Ruling> find(boolean accept, Defect.Kind kind, List<String> ids, List<Coordinate> at) {
        for (Ruling ruling : rulings) {
            if (ruling.accept() == accept
                    && ruling.kind() == kind
                    && new HashSet<>(ruling.featureIds()).equals(new HashSet<>(ids))
                    && (ruling.at().isEmpty()
                            || at.stream()
                                    .anyMatch(place -> distance(ruling.at().get(), place) <= NEAR))) {
                return Optional.of(ruling);
            }
        }
        return Optional.empty();
    }

    /** From a position to a place [m]; 0 where the place is not known. */
    static double distance(NetworkCorrections.At from, Coordinate to) {
        return Double.isNaN(to.x) ? 0 : Ground.distance(from.longitude(), from.latitude(), to.x, to.y);
    }

    void note(String where, Status status, String text) {
        outcomes.put(where, new CorrectionOutcome(where, status, text));
    }

    boolean isNoted(Ruling ruling) {
        return outcomes.containsKey(ruling.where());
    }

    void noteRefused(List<String> ids, List<Coordinate> at) {
        refused.add(new Place(new HashSet<>(ids), at));
    }

    /** Whether a refused repair lies here that concerned all these features. */
    boolean isRefused(Coordinate at, List<String> ids) {
        return refused.stream()
                .anyMatch(place -> place.ids.containsAll(ids)
                        && place.at.stream().anyMatch(other -> Ground.distance(at, other) <= NEAR));
    }

    void addAll(Rulings other) {
        outcomes.putAll(other.outcomes);
        refused.addAll(other.refused);
    }

    /** What became of every correction of a layer with these features. */
    List<CorrectionOutcome> outcomes(Set<String> features) {
        for (Ruling ruling : rulings) {
            if (!isNoted(ruling)) {
                List<String> gone = ruling.featureIds().stream()
                        .filter(id -> !features.contains(id))
                        .toList();
                boolean fits = gone.isEmpty();
                note(
                        ruling.where(),
                        fits ? Status.NO_LONGER_NEEDED : Status.DOES_NOT_FIT,
                        fits
                                ? "there is no such defect here any more"
                                : "the layer has no feature " + DefectLog.names(gone) + " any more");
            }
        }
        return List.copyOf(outcomes.values());
    }
}
