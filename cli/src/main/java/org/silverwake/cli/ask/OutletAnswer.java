// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/** Reads where water leaves: ids of the layer, places in the list that was shown, or all. */
final class OutletAnswer {
    private final VectorLayer layer;
    private final List<DrawnNetwork.Outlet> shown;
    private final Optional<AssemblyOptions> options;
    private final Set<String> ids;

    /**
     * For a layer.
     *
     * @param shown outlets in the order in which they were listed
     * @param options with which the layer makes a network; empty where it makes none yet
     */
    OutletAnswer(VectorLayer layer, List<DrawnNetwork.Outlet> shown, Optional<AssemblyOptions> options) {
        this.layer = layer;
        this.shown = shown;
        this.options = options;
        this.ids = layer.features().stream().map(LayerFeature::id).collect(Collectors.toSet());
    }

    /**
     * The ids; empty for all.
     *
     * @throws IllegalArgumentException in words for the user
     */
    List<String> read(String answer) {
        List<String> chosen = new ArrayList<>();
        if (answer.equalsIgnoreCase("all")) {
            return chosen;
        }
        for (String part : answer.split("[,;]")) {
            String id = id(part.strip());
            if (!chosen.contains(id)) {
                chosen.add(id);
            }
        }
        options.ifPresent(known -> check(chosen, known));
        return chosen;
    }

    /** A number is a place in the list, "reach 2" an id; a bare 2 that may be either is asked again. */
    private String id(String word) {
        String id = word.replaceFirst("(?i)^reach\\s+", "");
        boolean listed = word.matches("[1-9]\\d?\\)?") && Integer.parseInt(word.replace(")", "")) <= shown.size();
        if (!listed && !ids.contains(id)) {
            throw new IllegalArgumentException("no reach has the id \"" + id + "\"; give one of the layer, or all");
        }
        String there =
                listed ? shown.get(Integer.parseInt(word.replace(")", "")) - 1).feature() : id;
        if (listed && ids.contains(word) && !there.equals(word)) {
            throw new IllegalArgumentException(word + " could be the " + word + ") of the list, reach " + there
                    + ", or the reach whose id is " + word + "; give " + word + ") or reach " + word);
        }
        return there;
    }

    private void check(List<String> chosen, AssemblyOptions known) {
        try {
            DrawnNetwork.require(
                    layer,
                    known.withOutlets(chosen.stream()
                            .map(AssemblyOptions.Outlet::ofFeature)
                            .toArray(AssemblyOptions.Outlet[]::new)));
        } catch (GeoDataException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
