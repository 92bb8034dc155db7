// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/** Whether an option can be adopted in part. */
public enum Adoption {
    /** Each option is taken or left. */
    ALL_OR_NOTHING,
    /** Any share of each option. */
    PARTIAL
}
