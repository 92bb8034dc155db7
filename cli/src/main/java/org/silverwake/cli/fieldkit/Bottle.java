// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

/**
 * One bottle, bag or wrapped fish.
 *
 * @param code what its label says; each once
 * @param stop index of the place
 * @param analysis what it is for
 * @param role sample, duplicate or blank
 */
record Bottle(String code, int stop, Analysis analysis, Role role) {
    /** What a bottle is among the others of its place. */
    enum Role {
        /** The sample itself. */
        SAMPLE("", ""),
        /** A second one, taken right after it in the same way. */
        DUPLICATE("-D", "field duplicate"),
        /** Water of the laboratory, poured and handled in the field as a sample is. */
        BLANK("-B", "field blank");

        private final String ending;
        private final String type;

        Role(String ending, String type) {
            this.ending = ending;
            this.type = type;
        }

        /** What follows the code. */
        String ending() {
            return ending;
        }

        /** Word of the samples table's column type, "" for a sample. */
        String type() {
            return type;
        }
    }
}
