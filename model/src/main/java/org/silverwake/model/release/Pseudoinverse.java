// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** A matrix taken apart by its singular values: its pseudoinverse, rank and null spaces. */
final class Pseudoinverse {
    /** Singular values below this share of the scale count as none. */
    static final double RANK = 1e-10;

    private final RealMatrix left;
    private final double[] singular;
    private final RealMatrix rightTransposed;
    private final int rank;
    private final int rows;
    private final int columns;

    private Pseudoinverse(
            RealMatrix left, double[] singular, RealMatrix rightTransposed, int rank, int rows, int columns) {
        this.left = left;
        this.singular = singular;
        this.rightTransposed = rightTransposed;
        this.rank = rank;
        this.rows = rows;
        this.columns = columns;
    }

    int rank() {
        return rank;
    }

    static Pseudoinverse of(RealMatrix matrix, double scale) {
        // padded to a square, so that both null spaces come out whole
        int size = Math.max(matrix.getRowDimension(), matrix.getColumnDimension());
        RealMatrix square = new Array2DRowRealMatrix(size, size);
        square.setSubMatrix(matrix.getData(), 0, 0);
        SingularValueDecomposition parts = new SingularValueDecomposition(square);
        double[] singular = parts.getSingularValues();
        int rank = 0;
        while (rank < singular.length && singular[rank] > RANK * scale) {
            rank++;
        }
        return new Pseudoinverse(
                parts.getU(), singular, parts.getVT(), rank, matrix.getRowDimension(), matrix.getColumnDimension());
    }

    RealMatrix inverse() {
        RealMatrix inverse = new Array2DRowRealMatrix(columns, rows);
        for (int k = 0; k < rank; k++) {
            RealVector u = left.getColumnVector(k).getSubVector(0, rows);
            RealVector v = rightTransposed.getRowVector(k).getSubVector(0, columns);
            inverse = inverse.add(v.outerProduct(u).scalarMultiply(1 / singular[k]));
        }
        return inverse;
    }

    /** Projection onto what the columns do not reach. */
    RealMatrix leftNull() {
        RealMatrix projection = MatrixUtils.createRealIdentityMatrix(rows);
        for (int k = 0; k < rank; k++) {
            RealVector u = left.getColumnVector(k).getSubVector(0, rows);
            projection = projection.subtract(u.outerProduct(u));
        }
        return projection;
    }

    RealMatrix rowBasis() {
        RealMatrix basis = new Array2DRowRealMatrix(Math.max(1, rank), columns);
        for (int k = 0; k < rank; k++) {
            basis.setRowVector(k, rightTransposed.getRowVector(k).getSubVector(0, columns));
        }
        return basis;
    }

    /** The right-hand side that goes with {@link #rowBasis}. */
    RealVector inRowBasis(RealVector rightHandSide) {
        RealVector found = new ArrayRealVector(Math.max(1, rank));
        for (int k = 0; k < rank; k++) {
            found.setEntry(k, left.getColumnVector(k).getSubVector(0, rows).dotProduct(rightHandSide) / singular[k]);
        }
        return found;
    }

    /** Length of the part of a vector that the columns do not reach. */
    double outsideRange(RealVector vector) {
        return leftNull().operate(vector).getNorm();
    }

    /** Whether a column's unknown has one value alone. */
    boolean isDetermined(int column) {
        double reached = 0;
        for (int k = 0; k < rank; k++) {
            reached += rightTransposed.getEntry(k, column) * rightTransposed.getEntry(k, column);
        }
        return 1 - reached < RANK;
    }
}
