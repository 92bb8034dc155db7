// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.List;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.write.PhoneMap.Fact;

/** What a map for phones tells of reaches of the network. */
interface PhoneFigure {
    /** Looks in the order of the legend, the worst first. */
    List<ReachShade> order();

    /** What the legend says of a look. */
    String legend(ReachShade shade);

    ReachShade shade(int reach);

    /** Of reaches that look the same the one with the largest is told [any unit]. */
    double badness(int reach);

    List<Fact> facts(int reach);

    /** A sentence each. */
    List<String> remarks(int reach);
}
