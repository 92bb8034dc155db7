// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Optional;
import org.silverwake.cli.laboratory.LabRow;
import org.silverwake.cli.scenario.ScenarioInput.Position;

/**
 * One result of a field sample as the laboratory reported it, and where it was taken.
 *
 * @param where file and line, or sheet and cell
 * @param row what was understood
 * @param position where it was taken; empty where the row does not say
 * @param unplaced why there is no position, or ""
 * @param river name of the river it should lie on, if given
 */
public record Sample(String where, LabRow row, Optional<Position> position, String unplaced, Optional<String> river) {
    /** Its code, or else its station and day, or else its place in the file. */
    public String name() {
        if (!row.code().isEmpty()) {
            return row.code();
        }
        String day = row.date().map(d -> " " + d).orElse("");
        return row.station().isEmpty() ? where : row.station() + day;
    }

    /** Whether it has been understood and says where it was taken. */
    public boolean isUsable() {
        return row.standing() == LabRow.Standing.UNDERSTOOD && position.isPresent();
    }
}
