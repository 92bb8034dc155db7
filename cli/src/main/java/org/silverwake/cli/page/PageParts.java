// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts a page together from its resources. Everything is in the one file; a content security policy names the two
 * scripts by their hashes and forbids every connection, so that text from a scenario can neither run nor call home.
 */
final class PageParts {
    private static final String LEAFLET = "/META-INF/resources/webjars/leaflet/1.9.4/dist/";

    private static final Pattern IMAGE = Pattern.compile("url\\(images/([a-z0-9-]+\\.png)\\)");
    private static final Pattern SLOT = Pattern.compile("\\{\\{([a-z-]+)\\}\\}");

    /** The page on which input is looked at and corrected. */
    static final PageParts CHECK = new PageParts(
            "page.html",
            "page.css",
            List.of(
                    "elements.js",
                    "symbols.js",
                    "geometry.js",
                    "words.js",
                    "network.js",
                    "lines.js",
                    "rivers.js",
                    "corrections.js",
                    "points.js",
                    "defects.js",
                    "labels.js",
                    "card.js",
                    "lists.js",
                    "main.js"));

    /** The page that tells what was found. */
    static final PageParts REPORT = new PageParts(
            "report/report.html",
            "report/report.css",
            List.of(
                    "elements.js",
                    "symbols.js",
                    "geometry.js",
                    "report/words.js",
                    "report/network.js",
                    "report/model.js",
                    "report/answers.js",
                    "report/choice.js",
                    "lines.js",
                    "report/reaches.js",
                    "report/areas.js",
                    "report/points.js",
                    "labels.js",
                    "report/legend.js",
                    "report/card.js",
                    "report/profile.js",
                    "report/whatif.js",
                    "report/tables.js",
                    "report/balance.js",
                    "report/frame.js",
                    "report/main.js"));

    private final String template;
    private final String style;
    private final List<String> scripts;

    /** A page of these resources; scripts stand in the order in which they need one another. */
    private PageParts(String template, String style, List<String> scripts) {
        this.template = template;
        this.style = style;
        this.scripts = scripts;
    }

    /** The page's own scripts. */
    List<String> scripts() {
        return scripts;
    }

    /** The words of the check page. */
    static String checkWords() {
        return text("words-en.json");
    }

    /** The page with this title, words and data; both are JSON that holds no "&lt;". */
    String page(String language, String title, String words, String data) {
        String leaflet = leafletScript();
        String script = script();
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("language", language);
        parts.put("title", escaped(title));
        parts.put("policy", policy(leaflet, script));
        parts.put("leaflet-css", leafletStyle());
        parts.put("css", text(style));
        parts.put("words", words);
        parts.put("data", data);
        parts.put("leaflet", leaflet);
        parts.put("script", script);
        return filled(text(template), parts);
    }

    /** The page's own scripts as one function, so that nothing of theirs is seen outside. */
    String script() {
        StringBuilder all = new StringBuilder("(function () {\n\"use strict\";\n");
        scripts.forEach(name -> all.append(text(name)));
        return all.append("})();\n").toString();
    }

    private static String policy(String... scripts) {
        StringBuilder policy =
                new StringBuilder("default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src");
        for (String script : scripts) {
            policy.append(" 'sha256-").append(sha256(script)).append('\'');
        }
        return policy.append("; base-uri 'none'; form-action 'none'").toString();
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Without the line that names its source map, which a browser's tools would ask for. */
    private static String leafletScript() {
        return text(LEAFLET + "leaflet.js").replaceAll("(?m)^//# sourceMappingURL=.*$", "");
    }

    private static String leafletStyle() {
        Matcher image = IMAGE.matcher(text(LEAFLET + "leaflet.css"));
        return image.replaceAll(found -> "url(data:image/png;base64,"
                + Base64.getEncoder().encodeToString(bytes(LEAFLET + "images/" + found.group(1))) + ")");
    }

    private static String filled(String template, Map<String, String> parts) {
        Matcher slot = SLOT.matcher(template);
        return slot.replaceAll(found -> Matcher.quoteReplacement(parts.get(found.group(1))));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A resource's text; a browser reads every line end as one line feed before it takes a script's hash. */
    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    private static byte[] bytes(String name) {
        try (InputStream in = PageParts.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program's own part is missing: " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
