// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

/**
 * Steady stocks of states that turn into one another and leak away: sum over j of a_ij M_j - (leak_i + sum over j of a_ji) M_i +
 * d_i = 0. The matrix is a column-dominant M-matrix given by its transfers and leaks, and is eliminated without a
 * subtraction, so that stocks are never negative and keep their digits however slow the leaks are beside the transfers.
 * Grassmann, Taksar &amp; Heyman (1985); Alfa, Xue &amp; Ye (2002).
 */
public final class LossElimination {
    private LossElimination() {}

    /**
     * Solves in place.
     *
     * @param transfer a_ij from state j to state i at {@code i x n + j} [1/s], at least 0; the diagonal is not read; overwritten
     * @param leak of each state [1/s], at least 0; overwritten
     * @param stock on entry what comes in, d [kg/s], at least 0; then the stocks [kg]
     * @param horizon a state that neither leaks nor turns into one that does is filled for so long [s], above 0
     * @return what comes in and never leaves again [kg/s], at least 0
     */
    public static double solve(double[] transfer, double[] leak, double[] stock, double horizon) {
        int n = leak.length;
        double[] out = new double[n];
        boolean[] stays = new boolean[n];
        for (int k = 0; k < n; k++) {
            out[k] = leak[k];
            for (int i = k + 1; i < n; i++) {
                out[k] += transfer[i * n + k];
            }
            stays[k] = out[k] == 0;
            if (stays[k]) {
                leak[k] = 1 / horizon;
                out[k] = leak[k];
            }
            for (int j = k + 1; j < n; j++) {
                double through = transfer[k * n + j] / out[k];
                leak[j] += leak[k] * through;
                for (int i = k + 1; i < n; i++) {
                    transfer[i * n + j] += i == j ? 0 : transfer[i * n + k] * through;
                }
            }
            for (int i = k + 1; i < n; i++) {
                stock[i] += transfer[i * n + k] / out[k] * stock[k];
            }
        }
        double staying = 0;
        for (int k = n - 1; k >= 0; k--) {
            double in = stock[k];
            for (int j = k + 1; j < n; j++) {
                in += transfer[k * n + j] * stock[j];
            }
            staying += stays[k] ? in : 0;
            stock[k] = stays[k] ? in * horizon : in / out[k];
        }
        return staying;
    }
}
