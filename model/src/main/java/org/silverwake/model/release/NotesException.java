// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.List;
import java.util.stream.Collectors;

/** Field notes of which no balance can be made, with everything that was found. */
public final class NotesException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<NoteFinding> findings;

    /** With what was found in the notes of a site. */
    public NotesException(String site, List<NoteFinding> findings) {
        super(findings.stream()
                .filter(NoteFinding::refused)
                .map(NoteFinding::text)
                .collect(Collectors.joining("\n" + site + ": ", site + ": ", "")));
        this.findings = List.copyOf(findings);
    }

    /** Everything found, kept notes included. */
    public List<NoteFinding> findings() {
        return findings;
    }
}
