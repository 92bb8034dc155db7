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
 * Puts the page together from its resources. Everything is in the one file; a content security policy names the two
 * scripts by their hashes and forbids every connection, so that text from a scenario can neither run nor call home.
 */
final class PageParts {
    private static final String LEAFLET = "/META-INF/resources/webjars/leaflet/1.9.4/dist/";

    /** The page's own scripts, in the order in which they need one another. */
    static final List<String> SCRIPTS = List.of(
            "words.js",
            "network.js",
            "rivers.js",
            "corrections.js",
            "points.js",
            "defects.js",
            "labels.js",
            "card.js",
            "lists.js",
            "main.js");

    private static final Pattern IMAGE = Pattern.compile("url\\(images/([a-z0-9-]+\\.png)\\)");
    private static final Pattern SLOT = Pattern.compile("\\{\\{([a-z-]+)\\}\\}");

    private PageParts() {}

    /** The page with this title and data; the data is JSON that holds no "&lt;". */
    static String page(String title, String data) {
        String leaflet = leafletScript();
        String script = script();
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("title", escaped(title));
        parts.put("policy", policy(leaflet, script));
        parts.put("leaflet-css", leafletStyle());
        parts.put("css", own("page.css"));
        parts.put("words", own("words-en.json"));
        parts.put("data", data);
        parts.put("leaflet", leaflet);
        parts.put("script", script);
        return filled(own("page.html"), parts);
    }

    /** The page's own scripts as one function, so that nothing of theirs is seen outside. */
    static String script() {
        StringBuilder all = new StringBuilder("(function () {\n\"use strict\";\n");
        SCRIPTS.forEach(name -> all.append(own(name)));
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

    private static String own(String name) {
        return text(name);
    }

    /** A resource's text; a browser reads every line end as one line feed before it takes a script's hash. */
    private static String text(String name) {
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
