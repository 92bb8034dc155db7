// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

/** What remains to be listed once directions are known. */
final class FinalChecks {
    private FinalChecks() {}

    static void list(Net net, Orientation orientation, AssemblyOptions options, DefectLog log) {}
}
