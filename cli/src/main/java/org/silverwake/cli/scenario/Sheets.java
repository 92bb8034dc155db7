// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is printed to be hung up.
 *
 * @param size of the paper
 * @param portrait whether it stands
 * @param kinds what is printed
 * @param title in plain words; made from title and medium where empty
 * @param whatToDo one sentence each
 * @param whomToAsk one line each
 * @param useUntil day after which nothing printed or put up is to be used any more
 * @param walking speed of people on foot [m/s]
 * @param boat speed of a boat [m/s]
 * @param locator layer of lines or areas that people know the land by, for the small map of where the basin lies
 * @param locatorWhere place of that layer in the scenario, for messages
 */
public record Sheets(
        Size size,
        boolean portrait,
        Set<Kind> kinds,
        Optional<String> title,
        List<String> whatToDo,
        List<String> whomToAsk,
        LocalDate useUntil,
        OptionalDouble walking,
        OptionalDouble boat,
        Optional<Path> locator,
        String locatorWhere) {
    /** Copies the collections. */
    public Sheets {
        kinds = Collections.unmodifiableSet(new TreeSet<>(kinds));
        whatToDo = List.copyOf(whatToDo);
        whomToAsk = List.copyOf(whomToAsk);
    }

    /** Sizes of paper (ISO 216). */
    public enum Size {
        A4,
        A3,
        A1
    }

    /** What a sheet shows: a map of one flow state or of the year; flow states side by side; mercury down a river; years to recover; shares of sites. */
    public enum Kind {
        MAP,
        FLOW_STATES,
        PROFILE,
        RECOVERY,
        SITE_SHARES
    }
}
