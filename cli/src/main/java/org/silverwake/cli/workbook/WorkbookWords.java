// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.silverwake.cli.scenario.Key;

/** The words of a workbook in one language; those that it does not have are English. */
public final class WorkbookWords {
    private static final String ENGLISH = "en";
    private static final String TRANSLATION = " = ";
    private static final List<String> LANGUAGES = List.of(ENGLISH, "es");

    private final Properties own;
    private final Properties english;
    private final Map<String, String> texts;

    private WorkbookWords(Properties own, Properties english, Map<String, String> texts) {
        this.own = own;
        this.english = english;
        this.texts = texts;
    }

    /** Languages that there are. */
    public static List<String> languages() {
        return LANGUAGES;
    }

    /**
     * The words of a language.
     *
     * @throws IllegalArgumentException if there are none in it, saying which languages there are
     */
    public static WorkbookWords of(String language) {
        String code = language.strip().toLowerCase(Locale.ROOT);
        if (!LANGUAGES.contains(code)) {
            throw new IllegalArgumentException(
                    "the workbook has no words in \"" + language + "\" yet; give " + String.join(" or ", LANGUAGES));
        }
        return new WorkbookWords(load(code), load(ENGLISH), texts(code));
    }

    /** The text of a word that there is. */
    String text(String word) {
        return find(word).orElseThrow(() -> new IllegalStateException("no word " + word));
    }

    /** The text of a word that there may be. */
    Optional<String> find(String word) {
        return Optional.ofNullable(own.getProperty(word, english.getProperty(word)));
    }

    /** Texts of word.1, word.2 and so on. */
    List<String> list(String word) {
        List<String> texts = new ArrayList<>();
        for (int i = 1; find(word + "." + i).isPresent(); i++) {
            texts.add(text(word + "." + i));
        }
        return texts;
    }

    /** A field's name in words: its own, or else its technical name without hyphens. */
    String column(String sheet, String name) {
        return find("column." + sheet + "." + name)
                .or(() -> find("column." + name))
                .orElseGet(() -> {
                    String plain = name.replaceAll("[-_.]+", " ").strip();
                    return plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
                });
    }

    /** Whether a heading is one that a sheet has in this language. */
    boolean isHeading(SheetPlan plan, String heading) {
        String bare = heading.replaceFirst(" \\*$|:.*$", "");
        return List.of("heading.unit", "heading.value").stream()
                        .anyMatch(word -> text(word).equals(bare))
                || plan.fields().stream()
                        .map(field -> field.name().replaceFirst("_(STATE|CLASS)$", ""))
                        .anyMatch(name -> column(plan.id(), name).equals(bare));
    }

    /** What a key or a column means: in the workbook's own words where it has some, else as the key table says. */
    String meaning(String path, String fallback) {
        return find("meaning." + path)
                .or(() -> find("meaning." + path.substring(path.lastIndexOf('.') + 1)))
                .orElseGet(() -> translated(fallback));
    }

    /** An English text of the key table in this language; as it is where it was not translated. */
    String translated(String text) {
        return texts.getOrDefault(text, text);
    }

    /** What a quantity may be, such as "0 to 1 km". */
    String range(Key key) {
        return key.range().replace(" to ", " " + text("range.to") + " ");
    }

    /** Translations of what the key table says: lines of "English = other language"; none of English itself. */
    private static Map<String, String> texts(String code) {
        Map<String, String> texts = new HashMap<>();
        try (InputStream in = WorkbookWords.class.getResourceAsStream("texts_" + code + ".txt")) {
            String all = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            all.lines().filter(line -> line.contains(TRANSLATION)).forEach(line -> {
                int at = line.indexOf(TRANSLATION);
                texts.put(line.substring(0, at), line.substring(at + TRANSLATION.length()));
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(texts);
    }

    private static Properties load(String code) {
        Properties words = new Properties();
        try (InputStream in = WorkbookWords.class.getResourceAsStream("words_" + code + ".properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }
}
