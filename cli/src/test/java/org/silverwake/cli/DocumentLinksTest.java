// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every page and picture that a page links to is there. */
class DocumentLinksTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)");

    @Test
    void linksLeadSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        for (Path page : pages()) {
            Matcher matcher = LINK.matcher(Files.readString(page));
            while (matcher.find()) {
                if (!matcher.group(1).contains("://")) {
                    links++;
                    Path target = page.resolveSibling(matcher.group(1));
                    if (!Files.exists(target)) {
                        broken.add(page + ": " + matcher.group(1));
                    }
                }
            }
        }
        assertThat(links).isGreaterThan(20);
        assertThat(broken).isEmpty();
    }

    private static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        for (String folder : List.of("docs", "scenarios")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
                files.filter(file -> file.toString().endsWith(".md")).forEach(pages::add);
            }
        }
        return pages;
    }
}
