// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The words of sheets and page in one language: one resource file each, {@code en.properties} and so on (UTF-8, keys of words with dots,
 * {@code {0}} for what is filled in, an apostrophe written twice). English holds every key; a test fails the build where another language lacks one. Immutable.
 */
public final class Texts {
    /** Languages there are (ISO 639-1), English first. */
    public static final List<String> LANGUAGES = List.of("en", "es", "fr", "pt", "id", "sw");

    private static final String REVIEWED_BY = "reviewed-by";

    private final Locale locale;
    private final Properties words;

    private Texts(Locale locale, Properties words) {
        this.locale = locale;
        this.words = words;
    }

    /**
     * The words of a language.
     *
     * @param language one of {@link #LANGUAGES}
     * @throws IllegalArgumentException if it is not there
     */
    public static Texts of(String language) {
        if (!LANGUAGES.contains(language)) {
            throw new IllegalArgumentException(
                    "language \"" + language + "\" is not there; give one of " + String.join(", ", LANGUAGES));
        }
        Properties words = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream(language + ".properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Texts(Locale.forLanguageTag(language), words);
    }

    /** The language (ISO 639-1). */
    public String language() {
        return locale.getLanguage();
    }

    /** Its locale, for formats. */
    public Locale locale() {
        return locale;
    }

    /** Who read the translation through; empty where nobody has, so that what is drawn with it is a draft. */
    public Optional<String> reviewedBy() {
        return Optional.ofNullable(words.getProperty(REVIEWED_BY)).filter(name -> !name.isBlank());
    }

    /**
     * A text.
     *
     * @param key of the text
     * @param parts what is filled in for {0}, {1}, ...: texts, formatted before
     * @throws IllegalArgumentException if there is no such text
     */
    public String text(String key, Object... parts) {
        String pattern = words.getProperty(key);
        if (pattern == null) {
            throw new IllegalArgumentException("no text \"" + key + "\" in " + language() + ".properties");
        }
        return new MessageFormat(pattern, locale).format(parts);
    }

    /** The texts {@code prefix.1}, {@code prefix.2} and so on, as far as they go. */
    public List<String> numbered(String prefix) {
        List<String> texts = new ArrayList<>();
        while (words.containsKey(prefix + "." + (texts.size() + 1))) {
            texts.add(text(prefix + "." + (texts.size() + 1)));
        }
        return List.copyOf(texts);
    }

    /** All keys but that of the reader. */
    public SortedSet<String> keys() {
        SortedSet<String> keys = new TreeSet<>(words.stringPropertyNames());
        keys.remove(REVIEWED_BY);
        return keys;
    }

    /** A number with so many significant digits as the language writes it; "0" for none, "" where it is not finite. */
    public String number(double value, int digits) {
        if (!Double.isFinite(value)) {
            return "";
        }
        DecimalFormat format = new DecimalFormat("#,##0.################", DecimalFormatSymbols.getInstance(locale));
        return format.format(value == 0 ? BigDecimal.ZERO : new BigDecimal(value).round(new MathContext(digits)));
    }

    /** A day as the language writes it, with the month as a word. */
    public String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(locale)
                .format(day);
    }
}
