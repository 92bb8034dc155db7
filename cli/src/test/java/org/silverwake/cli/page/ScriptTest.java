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

/** What can be told of the page's scripts without a browser; in a browser they are run by the other tests. */
class ScriptTest {
    private static final Map<Character, Character> PAIRS = Map.of(')', '(', ']', '[', '}', '{');
    private static final Pattern KEY = Pattern.compile("say\\(\"([A-Za-z.]+)\"[,)]");

    /** Brackets outside strings and comments come in pairs: a slip of the pen shows here first. */
    @Test
    void bracketsArePaired() {
        assertThat(PageParts.SCRIPTS).allSatisfy(name -> pairs(bare(text(name)), name));
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
        String all = PageParts.script();
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

    /** Style: no framework, nothing that asks a network, no markup made of text. */
    @Test
    void scriptsAskNoNetworkAndMakeNoMarkupOfNames() {
        assertThat(PageParts.script())
                .doesNotContain("fetch(", "XMLHttpRequest", "WebSocket", "import(", "http:", "https:", "eval(")
                .doesNotContain("document.write", "insertAdjacentHTML", "outerHTML");
        assertThat(PageParts.script().lines().filter(line -> line.contains("innerHTML")))
                .as("symbols alone, from constants")
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).contains("<svg viewBox"));
    }

    /** The words of people who work with mercury: never green, never a tick, never "safe". */
    @Test
    void nothingLooksLikeAnAllClear() {
        String page = PageParts.page("T", "{}").replaceAll("(?s)<script>.*?</script>", "") + PageParts.script();
        assertThat(page.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("safe\"", " safe ", "\u2713", "\u2714", "\u2705", "green");
        Matcher color = Pattern.compile("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})\\b")
                .matcher(text("page.css") + PageParts.script());
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
