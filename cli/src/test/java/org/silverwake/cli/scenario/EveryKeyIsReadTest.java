// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No key may be accepted and then ignored: a value that fits no key must be refused under every one of them. */
class EveryKeyIsReadTest {
    /** A list in a list, which no key takes. */
    private static final String MISFIT = "[[x]]";

    @TempDir
    private Path folder;

    static Stream<String> paths() {
        return KeyTable.all().stream().map(Key::path);
    }

    @ParameterizedTest
    @MethodSource("paths")
    void misfitIsRefused(String path) throws IOException {
        String yaml = yaml(List.of(path.split("\\.")));
        if (!path.startsWith("flow-states")) {
            yaml += "flow-states: {s: {share-of-year: 1}}\n";
        }
        Path file = folder.resolve(ScenarioReader.FILE);
        Files.writeString(file, yaml);
        List<String> problems = catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(file))
                .problems();
        String shown = path.replace("outlets.*", "outlets[1]")
                .replace("profiles.*", "profiles[1]")
                .replace("ranges.*", "ranges[1]")
                .replace("layers.*", "layers[1]")
                .replace("*", "s");
        assertThat(problems)
                .as(yaml)
                .anySatisfy(p -> assertThat(p).contains(" " + shown).contains("found a list"));
    }

    /** One line of YAML that gives the misfit under the path, with the method under which the key acts. */
    private static String yaml(List<String> path) {
        StringBuilder text = new StringBuilder(path.get(0)).append(": ");
        StringBuilder end = new StringBuilder();
        for (int i = 1; i < path.size(); i++) {
            boolean item = path.get(i).equals("*")
                    && List.of("outlets", "profiles", "ranges", "layers").contains(path.get(i - 1));
            if (item) {
                text.append('[');
                end.insert(0, ']');
            } else {
                text.append('{')
                        .append(method(path, i))
                        .append(path.get(i).replace("*", "s"))
                        .append(": ");
                end.insert(0, '}');
            }
        }
        return text.append(MISFIT).append(end).append('\n').toString();
    }

    private static String method(List<String> path, int level) {
        boolean water = level == 1 && path.get(0).equals("discharge") && path.size() > 2;
        return !water
                ? ""
                : "method: " + (path.get(1).equals("specific-discharge") ? path.get(1) : "headwaters") + ", ";
    }
}
