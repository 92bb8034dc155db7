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
import java.util.Arrays;
import java.util.List;
import org.silverwake.geo.GeoDataException;

/**
 * The DejaVu Sans family that comes with the program, so that every machine draws the same, also one without fonts. It covers Latin
 * with Vietnamese, Greek, Cyrillic and the signs of units.
 */
public final class Fonts {
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    /** One font of the family. */
    enum Face {
        REGULAR("DejaVuSans.ttf", "medium-r", Font.PLAIN),
        BOLD("DejaVuSans-Bold.ttf", "bold-r", Font.BOLD),
        OBLIQUE("DejaVuSans-Oblique.ttf", "medium-o", Font.ITALIC),
        BOLD_OBLIQUE("DejaVuSans-BoldOblique.ttf", "bold-o", Font.BOLD | Font.ITALIC);

        private final String file;
        private final String look;
        private final int style;

        Face(String file, String look, int style) {
            this.file = file;
            this.look = look;
            this.style = style;
        }

        /** The face of a font of this family, which a font read from a file tells by its name alone. */
        static Face of(Font font) {
            String name = font.getFontName(java.util.Locale.ROOT);
            return of(font.isBold() || name.contains("Bold"), font.isItalic() || name.contains("Oblique"));
        }

        static Face of(boolean bold, boolean slanted) {
            return bold ? slanted ? BOLD_OBLIQUE : BOLD : slanted ? OBLIQUE : REGULAR;
        }

        boolean isBold() {
            return (style & Font.BOLD) != 0;
        }

        boolean isSlanted() {
            return (style & Font.ITALIC) != 0;
        }

        /** As {@link Font} counts styles. */
        int style() {
            return style;
        }

        Font font() {
            return Loaded.FONTS.get(ordinal());
        }

        InputStream open() throws IOException {
            return Fonts.open(file);
        }
    }

    private static final class Loaded {
        private static final List<Font> FONTS =
                Arrays.stream(Face.values()).map(Fonts::load).toList();
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
            for (Face face : Face.values()) {
                unpack(face.file, cache.resolve(face.file));
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
        StringBuilder text = new StringBuilder("version=1\n");
        for (String family : List.of("serif", "sansserif", "monospaced", "dialog", "dialoginput")) {
            for (Face face : Face.values()) {
                text.append(family + "." + styles.get(face.ordinal()) + ".latin-1=-misc-DejaVu Sans-" + face.look
                        + "-normal--*-%d-*-*-p-*-iso10646-1\n");
            }
        }
        text.append("sequence.allfonts=latin-1\n");
        for (Face face : Face.values()) {
            String path = cache.resolve(face.file).toString().replace("\\", "\\\\");
            text.append("filename.-misc-DejaVu_Sans-" + face.look + "-normal--*-%d-*-*-p-*-iso10646-1=" + path + "\n");
        }
        return text.toString();
    }

    /** Upright letters of a size [points]. */
    public static Font regular(double size) {
        return Face.REGULAR.font().deriveFont((float) size);
    }

    /** Bold letters of a size [points]. */
    public static Font bold(double size) {
        return Face.BOLD.font().deriveFont((float) size);
    }

    /** Slanted letters of a size [points]. */
    public static Font oblique(double size) {
        return Face.OBLIQUE.font().deriveFont((float) size);
    }

    private static Font load(Face face) {
        try (InputStream in = face.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new GeoDataException(
                    "font " + face.file + ": cannot be used (" + e.getMessage()
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
