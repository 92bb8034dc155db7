// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.silverwake.cli.text.Texts;

/** What can be told of the page's scripts without a browser; in a browser they are run by the other tests. */
class ScriptTest {
    private static final Map<Character, Character> PAIRS = Map.of(')', '(', ']', '[', '}', '{');
    private static final Pattern KEY = Pattern.compile("say\\(\"([A-Za-z.]+)\"[,)]");

    private static Set<String> allScripts() {
        Set<String> all = new TreeSet<>(PageParts.CHECK.scripts());
        all.addAll(PageParts.REPORT.scripts());
        return all;
    }

    /** Brackets outside strings and comments come in pairs: a slip of the pen shows here first. */
    @Test
    void bracketsArePaired() {
        assertThat(allScripts()).allSatisfy(name -> pairs(bare(text(name)), name));
    }

    private static void pairs(String code, String name) {
        Deque<Character> open = new ArrayDeque<>();
        for (char c : code.toCharArray()) {
            if (PAIRS.containsValue(c)) {
                open.push(c);
            } else if (PAIRS.containsKey(c)) {
                assertThat(open.poll()).as("%s: before %s", name, c).isEqualTo(PAIRS.get(c));
            }
        }
        assertThat(open).as(name).isEmpty();
    }

    /** Without comments, strings and patterns. */
    private static String bare(String script) {
        return script.replaceAll(
                "(?s)/\\*.*?\\*/|//[^\\n]*|\"(?:\\\\.|[^\"\\\\\\n])*\"|'(?:\\\\.|[^'\\\\\\n])*'|(?<=[(=:?] ?)/(?:\\\\.|\\[[^\\]]*\\]|[^/\\\\\\n])+/",
                "\"\"");
    }

    @Test
    void everyWordIsThereAndIsUsed() throws IOException {
        Set<String> known = new TreeSet<>();
        try (JsonParser json = new JsonFactory().createParser(text("words-en.json"))) {
            while (json.nextToken() != null) {
                if (json.currentToken() == JsonToken.FIELD_NAME) {
                    assertThat(known.add(json.currentName()))
                            .as(json.currentName())
                            .isTrue();
                }
            }
        }
        String all = PageParts.CHECK.script();
        Matcher asked = KEY.matcher(all);
        Set<String> used = new TreeSet<>();
        while (asked.find()) {
            used.add(asked.group(1));
        }
        assertThat(known).containsAll(used);
        assertThat(known)
                .allSatisfy(key -> assertThat(all)
                        .as("script that says %s", key)
                        .containsAnyOf("\"" + key + "\"", "\"" + key.substring(0, key.indexOf('.') + 1) + "\" +"));
    }

    /** Every text that the report page says is there, and none is there for nothing. */
    @Test
    void everyWordOfTheReportIsThereAndIsUsed() {
        String all = PageParts.REPORT.script();
        Set<String> known = new TreeSet<>(Texts.of("en").keys());
        Matcher asked = Pattern.compile("\"(page\\.[A-Za-z.]*[A-Za-z])\"").matcher(all);
        while (asked.find()) {
            assertThat(known).contains(asked.group(1));
        }
        assertThat(known.stream().filter(key -> key.startsWith("page.")))
                .allSatisfy(key -> assertThat(all)
                        .as("script that says %s", key)
                        .containsAnyOf("\"" + key + "\"", begun(key), begun(key.substring(0, key.lastIndexOf('.')))));
    }

    /** How a script begins a key that it completes. */
    private static String begun(String key) {
        return "\"" + key.substring(0, key.lastIndexOf('.') + 1) + "\" +";
    }

    /** Style: no framework, nothing that asks a network, no markup made of text. */
    @Test
    void scriptsAskNoNetworkAndMakeNoMarkupOfNames() {
        String all = PageParts.CHECK.script() + PageParts.REPORT.script();
        assertThat(all)
                .doesNotContain("fetch(", "XMLHttpRequest", "WebSocket", "import(", "http:", "https:", "eval(")
                .doesNotContain("document.write", "insertAdjacentHTML", "outerHTML");
        assertThat(all.lines().filter(line -> line.contains("innerHTML")))
                .as("symbols alone, from constants")
                .hasSize(3)
                .allSatisfy(line -> assertThat(line).contains("<svg viewBox"));
    }

    /** The words of people who work with mercury: never green, never a tick, never "safe". */
    @Test
    void nothingLooksLikeAnAllClear() {
        String page = PageParts.CHECK.page("en", "T", PageParts.checkWords(), "{}")
                + PageParts.REPORT.page("en", "T", "{}", "{}");
        page += String.join(
                "\n",
                Texts.of("en").keys().stream()
                        .filter(key -> key.startsWith("page."))
                        .map(key -> Texts.of("en").text(key))
                        .toList());
        page = page.replaceAll("(?s)<script>.*?</script>", "") + PageParts.CHECK.script() + PageParts.REPORT.script();
        assertThat(page.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("safe\"", " safe ", "\u2713", "\u2714", "\u2705", "green");
        Matcher color = Pattern.compile("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})\\b")
                .matcher(text("page.css")
                        + text("report/report.css")
                        + PageParts.CHECK.script()
                        + PageParts.REPORT.script());
        while (color.find()) {
            int red = Integer.parseInt(color.group(1), 16);
            int green = Integer.parseInt(color.group(2), 16);
            int blue = Integer.parseInt(color.group(3), 16);
            assertThat(green > red && green > blue).as(color.group()).isFalse();
        }
    }

    private static String text(String name) {
        try (InputStream in = PageParts.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
