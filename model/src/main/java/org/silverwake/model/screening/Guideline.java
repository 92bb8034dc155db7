// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Optional;

/**
 * One published value that a medium is compared with.
 *
 * @param id name by which it is chosen
 * @param observable what it is a value of, and how flow states are averaged for it
 * @param value the value [kg/m3 or kg/kg], above 0
 * @param printed the value as it was printed, with its unit, as "0.77 ug/L"
 * @param protects what or whom it protects
 * @param averaging averaging as its source words it
 * @param source who published it, where and when
 * @param status whether it is in force
 * @param checked whether somebody saw the printed value
 * @param note remarks, "" for none
 */
public record Guideline(
        String id,
        Observable observable,
        double value,
        String printed,
        String protects,
        String averaging,
        Source source,
        Status status,
        Checked checked,
        String note) {

    /** Refuses what no guideline can be. */
    public Guideline {
        if (id.isBlank()) {
            throw new IllegalArgumentException("id: empty; give every guideline an id of its own");
        }
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("value: " + printed + " is not allowed; give a number above 0");
        }
    }

    /** Body, document, year and jurisdiction, as text: years may be several. */
    public record Source(String body, String document, String year, String jurisdiction) {
        /** In one line: "US EPA, National Recommended Aquatic Life Criteria (1995/1996)". */
        public String words() {
            return body + ", " + document + (year.isEmpty() ? "" : " (" + year + ")");
        }
    }

    /** Whether a value is in force. */
    public enum Status {
        /** In force. */
        CURRENT("current"),
        /** Published, not law. */
        ADVISORY("advisory"),
        /** Replaced; chosen by id alone. */
        SUPERSEDED("superseded");

        private final String word;

        Status(String word) {
            this.word = word;
        }

        /** Word used in tables. */
        public String word() {
            return word;
        }
    }

    /** How the value was checked. */
    public enum Checked {
        /** The printed value was seen in its source. */
        SEEN("printed value seen"),
        /** A secondary source, or the source for a part of it. */
        PARTLY("partly"),
        /** Nobody looked it up. */
        FROM_MEMORY("from memory");

        private final String word;

        Checked(String word) {
            this.word = word;
        }

        /** Word used in tables. */
        public String word() {
            return word;
        }
    }

    /** Id, followed by "(not checked in print)" where the printed value was not seen, and "(superseded)" where it is. */
    public String displayName() {
        return id
                + (checked == Checked.SEEN ? "" : " (not checked in print)")
                + (status == Status.SUPERSEDED ? " (superseded)" : "");
    }

    /** With what it is compared. */
    public Medium.Scope scope() {
        return observable.medium().scope();
    }

    /** Whether it is compared with every reach in every run: a value of river reaches whose medium and substance are always carried. */
    public boolean isOfReaches() {
        return scope() == Medium.Scope.REACH && observable.isModelled();
    }

    /** Factor from SI to the unit the value is printed in [-], for tables beside it. */
    public double fromSi() {
        return 1 / printedUnit().toSi();
    }

    /** Unit the value is printed in. */
    public String unit() {
        return printedUnit().word();
    }

    /**
     * Why this value may not be compared with another observable than its own: another medium, substance, fraction or
     * basis. Empty where it may. Averaging is not looked at.
     */
    public Optional<String> refusal(Observable other) {
        boolean same = observable.medium() == other.medium()
                && observable.substance() == other.substance()
                && observable.fraction() == other.fraction()
                && observable.basis() == other.basis();
        return same
                ? Optional.empty()
                : Optional.of(
                        id + " is a value of " + observable.words() + "; it is not compared with " + other.words());
    }

    private GuidelineUnit printedUnit() {
        return GuidelineUnit.find(printed.substring(printed.lastIndexOf(' ') + 1))
                .orElseThrow(() -> new IllegalStateException(id + ": unknown unit in " + printed));
    }
}
