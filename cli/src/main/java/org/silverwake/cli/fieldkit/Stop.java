// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.List;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;

/**
 * A place where samples are taken.
 *
 * @param name its name
 * @param longitude WGS 84 degrees, as given
 * @param latitude WGS 84 degrees, as given
 * @param reference where it lies on the river, in words
 * @param uses what it is used for
 * @param note remarks, or ""
 */
record Stop(String name, double longitude, double latitude, String reference, List<PlaceUse> uses, String note) {
    /** Copies the list. */
    Stop {
        uses = List.copyOf(uses);
    }
}
