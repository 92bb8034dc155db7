// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps the library's known noise off the user's screen: what matters reaches the user as our own messages. */
final class GeoToolsQuiet {
    // Held, since the log manager forgets loggers that nobody holds.
    private static final Logger GEOTOOLS = Logger.getLogger("org.geotools");
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    static {
        GEOTOOLS.setLevel(Level.OFF);
        PREFERENCES.setLevel(Level.OFF);
    }

    private GeoToolsQuiet() {}

    /** Loads the class, which is all it takes. */
    static void please() {
        // the static block does it
    }
}
