// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.balance.Balance;

/** Background mercury of one flow state: what the river carries without any site. */
interface BackgroundLoads {
    /** Load of a form at a cell's head [kg/s]. */
    double head(int cell, int form);

    /** Load of a form at a cell's end [kg/s]. */
    double end(int cell, int form);

    /** Time integral of a form's load in a cell [kg]. */
    double time(int cell, int form);

    /** What abstractions at a reach's head take of all forms [kg/s]. */
    double taken(int reach);

    /** Its budget. */
    Balance balance();
}
