// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that a test names stands in docs/references.bib. */
class ReferenceKeysTest {
    private static final Pattern NAMED = Pattern.compile("@Reference\\(key = \"([^\"]+)\"");
    private static final Pattern LISTED = Pattern.compile("(?m)^@\\w+\\{([^,]+),");

    @Test
    void everySourceIsListed() throws IOException {
        Set<String> listed = found(LISTED, Files.readString(Path.of("..", "docs", "references.bib")));
        Set<String> named = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith("Test.java")).toList()) {
                named.addAll(found(NAMED, Files.readString(file)));
            }
        }
        assertThat(named).hasSizeGreaterThan(10);
        assertThat(listed).containsAll(named);
    }

    private static Set<String> found(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return matcher.results().map((MatchResult r) -> r.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }
}
