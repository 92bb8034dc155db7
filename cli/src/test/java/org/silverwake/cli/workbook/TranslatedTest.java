// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Spanish workbook has no English left but what the program reads: keys, choices, names of units, citations. */
class TranslatedTest {
    /** Words typed as they are, and lists of them. */
    private static final String READ =
            "silverwake:.*|[a-z][a-z0-9_#.*-]*|true, false|([a-z][a-z0-9 -]*, )+[a-z][a-z0-9 -]*( \\(.*)?";

    private static final String NUMBER = "[<>]?[-+\\d.eE]+( ?[%A-Za-z0-9/]+| log10 L/kg)?";
    private static final String SAME =
            "Hg\\(II\\)|log10 Kd|Datum|[A-Z_0-9]+[a-z]*2?|W-01|A4, A3, A1|slurry|mg/kg|ng/L|village;fishing";

    @TempDir
    private Path folder;

    @Test
    void noCellIsTheSameInBothLanguages() throws java.io.IOException {
        Set<String> both = texts("en");
        both.retainAll(texts("es"));
        assertThat(both).noneMatch(text -> text.contains(" ") && !text.matches(READ + "|" + NUMBER + "|" + SAME));
    }

    @Test
    void everyMeaningIsTranslated() {
        WorkbookWords english = WorkbookWords.of("en");
        WorkbookWords spanish = WorkbookWords.of("es");
        Set<String> left = new TreeSet<>();
        for (SheetPlan plan : WorkbookPlan.sheets()) {
            for (Field field : plan.fields()) {
                String path = plan.isOfKeys() ? field.key().path() : plan.id() + "." + field.name();
                String meaning = field.key().meaning();
                if (!meaning.isEmpty() && spanish.meaning(path, meaning).equals(english.meaning(path, meaning))) {
                    left.add(path + ": " + meaning);
                }
            }
        }
        assertThat(left).isEmpty();
    }

    private Set<String> texts(String language) throws java.io.IOException {
        Path file = folder.resolve(language + ".xlsx");
        WorkbookWriter.write(file, WorkbookContents.none(), language);
        return BookReader.read(file).stream()
                .flatMap(sheet -> sheet.rows().values().stream().map(Map::values))
                .flatMap(cells -> cells.stream().map(BookCell::text))
                .collect(Collectors.toCollection(HashSet::new));
    }
}
