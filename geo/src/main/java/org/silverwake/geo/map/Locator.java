// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;

/** The small map of where the basin lies: a box on a layer that people know the land by, or a mark on a globe. Immutable. */
public final class Locator {
    private final Optional<BackdropLayer> layer;

    private Locator(Optional<BackdropLayer> layer) {
        this.layer = layer;
    }

    /** A globe with its net of meridians and parallels. */
    public static Locator globe() {
        return new Locator(Optional.empty());
    }

    /** A layer of lines or areas; a globe where nothing is in it. */
    public static Locator on(BackdropLayer layer) {
        return new Locator(layer.items().isEmpty() ? Optional.empty() : Optional.of(layer));
    }

    /**
     * Draws it, made for some 35 mm and fit for more.
     *
     * @param room where on the page [points]; the drawing is as large as fits, in the middle
     */
    public void draw(Graphics2D g, Rectangle2D room, RiverMap map, GroundWords words) {
        List<Coordinate> places = ConcentrationMap.places(map, List.of());
        if (layer.isPresent()) {
            new LocatorMap(g, room, places).draw(layer.get());
        } else {
            new Globe(g, room, places).draw(words);
        }
    }
}
