// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.geom.Rectangle2D;
import org.locationtech.jts.geom.Envelope;

/** A rectangle of the page as geometry, page units. */
final class PageBox {
    private PageBox() {}

    static Envelope of(Rectangle2D room) {
        return new Envelope(room.getMinX(), room.getMaxX(), room.getMinY(), room.getMaxY());
    }
}
