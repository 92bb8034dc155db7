// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.special.Gamma;

/**
 * Weighted least-squares reconciliation of a linear flow sheet: measured streams are moved as little as their standard deviations
 * allow until every node closes, min sum ((x - y)/sd)^2 under A x = b.
 *
 * <p>Unmeasured streams are eliminated with the left null space of their columns (matrix projection, Crowe, Garcia Campos &amp;
 * Hrymak 1983, from memory); the rest is a minimum-norm problem in the adjustments over their standard deviations. A stream that
 * no measurement reaches is not determined: it has no value, and asking for one is refused. Names of improbable notes come from
 * the measurement test (Mah &amp; Tamhane 1982, from memory): adjustment over its own standard deviation beyond 1.96, the two-sided
 * 5 % point of the normal distribution.
 */
public final class Reconciliation {
    /** Two-sided 5 % point of the normal distribution [-]. */
    public static final double IMPROBABLE = 1.96;

    /** What counts as rounding beside 1. */
    private static final double RANK = Pseudoinverse.RANK;

    private final Map<String, Value> values;
    private final List<String> notDetermined;
    private final double objective;
    private final int degreesOfFreedom;

    private Reconciliation(
            Map<String, Value> values, List<String> notDetermined, double objective, int degreesOfFreedom) {
        this.values = values;
        this.notDetermined = notDetermined;
        this.objective = objective;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /**
     * A stream of the flow sheet.
     *
     * @param name its name
     * @param measured what was measured, with its standard deviation; empty where nothing was
     */
    public record Stream(String name, Optional<Noted> measured) {}

    /**
     * A linear condition: the sum of coefficient times stream is {@code total}.
     *
     * @param name its name
     * @param coefficients by stream [-]
     * @param total right-hand side, for a plain node what it stores [the streams' unit]
     */
    public record Node(String name, Map<String, Double> coefficients, double total) {
        /** Copies the coefficients. */
        public Node {
            coefficients = Map.copyOf(coefficients);
        }

        /**
         * A node into which and out of which streams run.
         *
         * @param stored what stays in it [the streams' unit]
         */
        public static Node of(String name, List<String> in, List<String> out, double stored) {
            Map<String, Double> coefficients = new TreeMap<>();
            in.forEach(stream -> coefficients.merge(stream, 1.0, Double::sum));
            out.forEach(stream -> coefficients.merge(stream, -1.0, Double::sum));
            return new Node(name, coefficients, stored);
        }
    }

    /**
     * A stream after reconciliation.
     *
     * @param stream the stream
     * @param value reconciled [its unit]
     * @param sd its standard deviation after reconciliation [its unit]
     * @param adjustmentOverSd what it was moved by, over the standard deviation stated [-]; empty where not measured
     * @param test what it was moved by, over the standard deviation of that move [-]; empty where it cannot be moved, or was not
     *     measured
     */
    public record Value(Stream stream, double value, double sd, OptionalDouble adjustmentOverSd, OptionalDouble test) {
        /** Whether the measurement is improbable beside the others. */
        public boolean isImprobable() {
            return Math.abs(test.orElse(0)) > IMPROBABLE;
        }
    }

    /**
     * Reconciles.
     *
     * @throws IllegalArgumentException if a node names an unknown stream, a measured stream has no standard deviation, or streams
     *     that are exact contradict the nodes
     */
    public static Reconciliation of(List<Stream> streams, List<Node> nodes) {
        List<Stream> measured =
                streams.stream().filter(s -> s.measured().isPresent()).toList();
        List<Stream> open = streams.stream().filter(s -> s.measured().isEmpty()).toList();
        RealMatrix ofMeasured = columns(measured, nodes);
        RealMatrix ofOpen = columns(open, nodes);
        checkNames(streams, nodes);
        RealVector totals = new ArrayRealVector(nodes.size());
        for (int i = 0; i < nodes.size(); i++) {
            totals.setEntry(i, nodes.get(i).total());
        }
        Pseudoinverse unmeasured = Pseudoinverse.of(ofOpen, 1);
        Adjusted adjusted = adjust(measured, ofMeasured, totals, unmeasured);
        Map<String, Value> values = new HashMap<>(adjusted.values());
        if (!open.isEmpty()) {
            RealMatrix back = unmeasured.inverse().multiply(ofMeasured);
            RealVector found = unmeasured.inverse().operate(totals.subtract(ofMeasured.operate(adjusted.x())));
            RealMatrix covariance = back.multiply(adjusted.covariance()).multiply(back.transpose());
            for (int j = 0; j < open.size(); j++) {
                if (unmeasured.isDetermined(j)) {
                    double sd = StrictMath.sqrt(Math.max(0, covariance.getEntry(j, j)));
                    values.put(
                            open.get(j).name(),
                            new Value(
                                    open.get(j),
                                    found.getEntry(j),
                                    sd,
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty()));
                }
            }
        }
        Map<String, Value> ordered = new LinkedHashMap<>();
        streams.forEach(s -> Optional.ofNullable(values.get(s.name())).ifPresent(v -> ordered.put(s.name(), v)));
        List<String> without = streams.stream()
                .map(Stream::name)
                .filter(name -> !ordered.containsKey(name))
                .toList();
        return new Reconciliation(ordered, without, adjusted.objective(), adjusted.degreesOfFreedom());
    }

    private record Adjusted(
            RealVector x, RealMatrix covariance, Map<String, Value> values, double objective, int degreesOfFreedom) {}

    private static Adjusted adjust(
            List<Stream> measured, RealMatrix columns, RealVector totals, Pseudoinverse unmeasured) {
        int n = measured.size();
        RealVector y = new ArrayRealVector(n);
        double largest = 0;
        RealMatrix weight = new Array2DRowRealMatrix(Math.max(1, n), Math.max(1, n));
        for (int j = 0; j < n; j++) {
            Stream stream = measured.get(j);
            Noted noted = stream.measured().orElseThrow();
            y.setEntry(j, noted.value());
            largest = Math.max(largest, noted.sd().orElse(0));
            weight.setEntry(
                    j,
                    j,
                    noted.sd()
                            .orElseThrow(() -> new IllegalArgumentException(stream.name()
                                    + " was measured and states no standard deviation; give one, or 0 where exact")));
        }
        // conditions that unmeasured streams leave on the measured ones, in an orthonormal basis
        Pseudoinverse rest = Pseudoinverse.of(unmeasured.leftNull().multiply(columns), 1);
        RealVector gap = unmeasured.leftNull().operate(totals.subtract(columns.operate(pad(y, columns))));
        RealMatrix basis = rest.rowBasis();
        RealMatrix scaled = basis.multiply(weight);
        RealVector wanted = rest.inRowBasis(gap);
        Pseudoinverse solver = Pseudoinverse.of(scaled, largest);
        RealVector z = solver.inverse().operate(wanted);
        checkMet(
                Math.max(scaled.operate(z).subtract(wanted).getNorm(), rest.outsideRange(gap)),
                totals.getNorm() + y.getNorm());
        RealMatrix redundant = solver.inverse().multiply(scaled);
        RealMatrix free = MatrixUtils.createRealIdentityMatrix(redundant.getRowDimension())
                .subtract(redundant);
        RealMatrix covariance = weight.multiply(free).multiply(weight);
        RealVector x = pad(y, columns).add(weight.operate(z));
        Map<String, Value> values = new HashMap<>();
        for (int j = 0; j < n; j++) {
            double ratio = redundant.getEntry(j, j);
            boolean movable = ratio > RANK;
            values.put(
                    measured.get(j).name(),
                    new Value(
                            measured.get(j),
                            x.getEntry(j),
                            StrictMath.sqrt(Math.max(0, covariance.getEntry(j, j))),
                            OptionalDouble.of(z.getEntry(j)),
                            movable
                                    ? OptionalDouble.of(z.getEntry(j) / StrictMath.sqrt(ratio))
                                    : OptionalDouble.empty()));
        }
        return new Adjusted(x, covariance, values, z.dotProduct(z), solver.rank());
    }

    private static RealVector pad(RealVector y, RealMatrix columns) {
        RealVector padded = new ArrayRealVector(columns.getColumnDimension());
        padded.setSubVector(0, y);
        return padded;
    }

    /** Exact streams, or conditions on no stream at all, may leave a gap that nothing can close. */
    private static void checkMet(double left, double size) {
        if (left > RANK * size) {
            throw new IllegalArgumentException(
                    "streams stated as exact do not balance; give at least one of them a standard deviation");
        }
    }

    private static RealMatrix columns(List<Stream> streams, List<Node> nodes) {
        RealMatrix matrix = new Array2DRowRealMatrix(Math.max(1, nodes.size()), Math.max(1, streams.size()));
        for (int i = 0; i < nodes.size(); i++) {
            for (int j = 0; j < streams.size(); j++) {
                matrix.setEntry(
                        i,
                        j,
                        nodes.get(i).coefficients().getOrDefault(streams.get(j).name(), 0.0));
            }
        }
        return matrix;
    }

    private static void checkNames(List<Stream> streams, List<Node> nodes) {
        List<String> names = streams.stream().map(Stream::name).toList();
        for (Node node : nodes) {
            for (String stream : node.coefficients().keySet()) {
                if (!names.contains(stream)) {
                    throw new IllegalArgumentException(node.name() + " names the stream " + stream
                            + ", which is not in the flow sheet; its streams are " + String.join(", ", names));
                }
            }
        }
    }

    /** Streams that have a value, in the order given. */
    public List<Value> values() {
        return List.copyOf(values.values());
    }

    /** Names of the streams that nothing measured reaches, and that have no value. */
    public List<String> notDetermined() {
        return notDetermined;
    }

    /** Whether a stream has a value. */
    public boolean isDetermined(String name) {
        return values.containsKey(name);
    }

    /**
     * Reconciled value of a stream.
     *
     * @throws IllegalArgumentException if the notes do not determine it
     */
    public Value value(String name) {
        return Optional.ofNullable(values.get(name))
                .orElseThrow(() -> new IllegalArgumentException(
                        name + " is not determined by the notes; measure it, or more of the streams beside it"));
    }

    /** Sum of the squares of adjustment over standard deviation [-]. */
    public double objective() {
        return objective;
    }

    /** Independent conditions among the measured streams. */
    public int degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** Probability of a misfit as large as this or larger [-]; 1 where nothing is redundant. */
    public double pValue() {
        return degreesOfFreedom == 0 ? 1 : Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, objective / 2);
    }

    /** Notes that are improbable beside the others, the worst first. */
    public List<Value> improbable() {
        List<Value> found = new ArrayList<>(
                values.values().stream().filter(Value::isImprobable).toList());
        found.sort((a, b) ->
                Double.compare(Math.abs(b.test().orElse(0)), Math.abs(a.test().orElse(0))));
        return found;
    }
}
