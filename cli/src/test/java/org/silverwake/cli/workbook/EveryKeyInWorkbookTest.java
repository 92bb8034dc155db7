// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.KeyTable;
import org.silverwake.cli.scenario.Problems;
import org.silverwake.cli.scenario.ScenarioNode;
import org.silverwake.cli.scenario.Written;

/**
 * Whatever scenario.yaml may say, the workbook may say: every key is written into one workbook and found again in the tree
 * that comes out of it. That no key of the tree is ignored is EveryKeyIsReadTest's part.
 */
class EveryKeyInWorkbookTest {
    private static final String NAME = "s";
    private static final String VALUE = "v";

    /** Sites stand on their own sheet; outlets stand row by row. */
    private static final List<String> OTHERWISE = List.of("sites.more.", "rivers.outlets");

    @TempDir
    private static Path folder;

    private static Written written;

    static Stream<String> paths() {
        return KeyTable.all().stream()
                .map(Key::path)
                .filter(path ->
                        OTHERWISE.stream().noneMatch(o -> path.equals(o) || o.endsWith(".") && path.startsWith(o)));
    }

    @BeforeAll
    static void write() {
        WorkbookContents.Builder contents = WorkbookContents.builder();
        List<SheetPlan> sheets = WorkbookPlan.sheets();
        for (SheetPlan plan : sheets) {
            if (plan.kind() == SheetPlan.Kind.ITEMS) {
                Map<String, String> row = new java.util.LinkedHashMap<>();
                plan.fields().forEach(f -> row.put(f.name(), VALUE));
                contents.addRow(plan.id(), row);
            }
        }
        paths().filter(path -> sheets.stream()
                        .noneMatch(p -> p.kind() == SheetPlan.Kind.ITEMS && path.startsWith(p.id() + ".")))
                .forEach(path -> contents.put(path.replace("*", NAME), VALUE));
        Path file = SmallWorkbook.write(folder, contents.build(), "en");
        written = new WorkbookReader().open(file, new Problems()).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void isFoundAgain(String path) {
        List<ScenarioNode> found = List.of(written.root());
        for (String key : path.split("\\.")) {
            List<ScenarioNode> next = new ArrayList<>();
            found.forEach(node -> next.addAll(below(node, key)));
            found = next;
        }
        assertThat(found.stream().map(EveryKeyInWorkbookTest::text)).as(path).contains(Optional.of(VALUE));
    }

    private static List<ScenarioNode> below(ScenarioNode node, String key) {
        List<ScenarioNode> found = new ArrayList<>();
        if (node instanceof ScenarioNode.Branch branch) {
            branch.entries().stream()
                    .filter(e -> e.key().equals(key.replace("*", NAME)))
                    .forEach(e -> found.add(e.value()));
        } else if (node instanceof ScenarioNode.Items items && key.equals("*")) {
            items.items().forEach(item -> found.add(item.value()));
        }
        return found;
    }

    private static Optional<String> text(ScenarioNode node) {
        if (node instanceof ScenarioNode.Items items && items.items().size() == 1) {
            return text(items.items().get(0).value());
        }
        return node instanceof ScenarioNode.Single single ? Optional.of(single.text()) : Optional.empty();
    }

    /** A key whose meaning speaks of a list takes several values in one cell. */
    @Test
    void listsAreKnown() {
        assertThat(KeyTable.all())
                .filteredOn(k -> k.meaning().matches("(?s).*\\blist\\b.*"))
                .filteredOn(k -> !k.path().equals("rivers.outlets") && !k.path().endsWith(".missing"))
                .allSatisfy(k ->
                        assertThat(WorkbookPlan.isList(k.path())).as(k.path()).isTrue());
    }

    @Test
    void noPlanAsksTwice() {
        for (SheetPlan plan : WorkbookPlan.sheets()) {
            assertThat(SheetColumn.of(plan, 2, 2).stream().map(SheetColumn::name))
                    .as(plan.id())
                    .doesNotHaveDuplicates();
        }
    }
}
