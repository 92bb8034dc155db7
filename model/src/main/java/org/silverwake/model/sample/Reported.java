// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

/**
 * What a laboratory found: a number, or that the value lies below or above one.
 *
 * @param kind which of them
 * @param value the number, or the limit [kg/m3 or kg/kg], above 0
 */
public record Reported(Kind kind, double value) {
    /** What the number says. */
    public enum Kind {
        /** Measured. */
        DETECTED,
        /** A number that the laboratory itself calls an estimate, as below its quantification limit. */
        ESTIMATED,
        /** Not found; the value lies below the limit. */
        BELOW,
        /** The value lies above the end of the measuring range. */
        ABOVE
    }

    /** Refuses numbers that no laboratory can report. */
    public Reported {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a reported value or limit of " + value + " is not allowed; give one above 0");
        }
    }

    /** Whether there is a number, not a limit. */
    public boolean isDetected() {
        return kind == Kind.DETECTED || kind == Kind.ESTIMATED;
    }

    /** "<", ">" or nothing, to stand before the value. */
    public String sign() {
        return switch (kind) {
            case BELOW -> "<";
            case ABOVE -> ">";
            case DETECTED, ESTIMATED -> "";
        };
    }

    /**
     * How it stands to a guideline value.
     *
     * @param guideline the value [kg/m3 or kg/kg]
     */
    public SampleAnswer against(double guideline) {
        return switch (kind) {
            case DETECTED, ESTIMATED -> value > guideline ? SampleAnswer.ABOVE : SampleAnswer.NOT_ABOVE;
            case BELOW -> value > guideline ? SampleAnswer.CANNOT_TELL : SampleAnswer.NOT_ABOVE;
            case ABOVE -> value >= guideline ? SampleAnswer.ABOVE : SampleAnswer.CANNOT_TELL;
        };
    }
}
