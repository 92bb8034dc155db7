// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

/** The words on the sheets, from one file; {0}, {1} ... stand for what is filled in. */
final class KitWords {
    private final Properties words = new Properties();

    KitWords() {
        try (InputStream in = KitWords.class.getResourceAsStream("words_en.properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a word, filled in. */
    String text(String word, Object... filled) {
        String text = words.getProperty(word);
        if (text == null) {
            throw new IllegalStateException("no word " + word);
        }
        return filled.length == 0 ? text : new MessageFormat(text.replace("'", "''"), Locale.ROOT).format(filled);
    }

    /** Texts of word.1, word.2 and so on. */
    List<String> list(String word) {
        List<String> list = new ArrayList<>();
        for (int i = 1; words.containsKey(word + "." + i); i++) {
            list.add(words.getProperty(word + "." + i));
        }
        return list;
    }
}
