// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.silverwake.geo.GeoDataException;

/**
 * The DejaVu Sans family that comes with the program, so that every machine draws the same, also one without fonts. It covers Latin
 * with Vietnamese, Greek, Cyrillic and the signs of units.
 */
public final class Fonts {
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
    private static final List<String> FILES =
            List.of("DejaVuSans.ttf", "DejaVuSans-Bold.ttf", "DejaVuSans-Oblique.ttf", "DejaVuSans-BoldOblique.ttf");

    private static final class Loaded {
        static final Font REGULAR = load(FILES.get(0));
        static final Font BOLD = load(FILES.get(1));
        static final Font OBLIQUE = load(FILES.get(2));
    }

    private Fonts() {}

    /**
     * Makes Java's text drawing independent of the machine's fonts. To be called before anything of java.awt is touched. Unpacks four
     * files (2.7 MB) once.
     *
     * @param cache folder of the user's own; made if absent
     * @throws GeoDataException if it cannot be written
     */
    public static void prepare(Path cache) {
        System.setProperty("java.awt.headless", "true");
        try {
            Files.createDirectories(cache);
            for (String file : FILES) {
                unpack(file, cache.resolve(file));
            }
            Path settings = cache.resolve("fontconfig.properties");
            String text = settings(cache.toAbsolutePath());
            if (!Files.exists(settings) || !Files.readString(settings).equals(text)) {
                Path part = Files.createTempFile(cache, "settings", ".part");
                Files.writeString(part, text);
                Files.move(part, settings, StandardCopyOption.REPLACE_EXISTING);
            }
            System.setProperty("sun.awt.fontconfig", settings.toAbsolutePath().toString());
        } catch (IOException e) {
            throw new GeoDataException(
                    cache + ": fonts cannot be unpacked (" + e.getMessage()
                            + "); give a cache folder that can be written",
                    e);
        }
    }

    private static void unpack(String name, Path file) throws IOException {
        try (InputStream in = open(name)) {
            byte[] bytes = in.readAllBytes();
            if (Files.exists(file) && Files.size(file) == bytes.length) {
                return;
            }
            Path part = Files.createTempFile(file.getParent(), name, ".part");
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The JDK's own table of logical fonts (internal format of OpenJDK's FontConfiguration): all of them DejaVu Sans. */
    private static String settings(Path cache) {
        List<String> styles = List.of("plain", "bold", "italic", "bolditalic");
        List<String> looks = List.of("medium-r", "bold-r", "medium-o", "bold-o");
        StringBuilder text = new StringBuilder("version=1\n");
        for (String family : List.of("serif", "sansserif", "monospaced", "dialog", "dialoginput")) {
            for (int k = 0; k < styles.size(); k++) {
                text.append(family + "." + styles.get(k) + ".latin-1=-misc-DejaVu Sans-" + looks.get(k)
                        + "-normal--*-%d-*-*-p-*-iso10646-1\n");
            }
        }
        text.append("sequence.allfonts=latin-1\n");
        for (int k = 0; k < looks.size(); k++) {
            String path = cache.resolve(FILES.get(k)).toString().replace("\\", "\\\\");
            text.append(
                    "filename.-misc-DejaVu_Sans-" + looks.get(k) + "-normal--*-%d-*-*-p-*-iso10646-1=" + path + "\n");
        }
        return text.toString();
    }

    /** Upright letters of a size [points]. */
    public static Font regular(double size) {
        return Loaded.REGULAR.deriveFont((float) size);
    }

    /** Bold letters of a size [points]. */
    public static Font bold(double size) {
        return Loaded.BOLD.deriveFont((float) size);
    }

    /** Slanted letters of a size [points]. */
    public static Font oblique(double size) {
        return Loaded.OBLIQUE.deriveFont((float) size);
    }

    private static Font load(String name) {
        try (InputStream in = open(name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new GeoDataException(
                    "font " + name + ": cannot be used (" + e.getMessage()
                            + "); the Java in use lacks its font library",
                    e);
        }
    }

    private static InputStream open(String name) throws IOException {
        InputStream in = Fonts.class.getResourceAsStream(FOLDER + name);
        if (in == null) {
            throw new IOException("the program's jars are incomplete: " + name);
        }
        return in;
    }
}
