// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

/** A computation that gave no usable number: ours to mend, or a problem too hard for the method. Nothing is written then. */
public final class NumericalException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What is left over [-]; NaN where there is no such number. */
    private final double residual;

    /**
     * A failure.
     *
     * @param where reach or flow state, as people know it
     * @param found what happened, what is allowed, what to do
     * @param residual what is left over [-]; NaN where there is no such number
     */
    public NumericalException(String where, String found, double residual) {
        super(where + ": " + found);
        this.residual = residual;
    }

    /**
     * A failure of a method from a library.
     *
     * @param where reach or flow state, as people know it
     * @param found what happened, what is allowed, what to do
     * @param cause the library's own exception
     */
    public NumericalException(String where, String found, RuntimeException cause) {
        super(where + ": " + found, cause);
        this.residual = Double.NaN;
    }

    /** What is left over [-]; NaN where there is no such number. */
    public double residual() {
        return residual;
    }
}
