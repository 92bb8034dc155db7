// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import org.silverwake.model.quantity.DecimalMark;

/** Numbers as laboratories write them: a decimal point or a decimal comma, whichever the file uses, where only one can be meant. */
final class LabNumber {
    static final String PATTERN = "[+\u2212-]?[\\d.,]+(?:[eE][+\u2212-]?\\d+)?";

    private LabNumber() {}

    /**
     * The number.
     *
     * @throws IllegalArgumentException in words for the user, if it is none or could be read in two ways
     */
    static double parse(String text, DecimalMark mark) {
        String number = text.strip();
        boolean comma = number.indexOf('.') < 0 && number.indexOf(',') >= 0;
        boolean otherMark = mark == DecimalMark.POINT && comma && !number.matches("[+-]?[1-9]\\d{0,2}(,\\d{3})+");
        return (otherMark ? DecimalMark.COMMA : mark).parse(number);
    }
}
