// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.model.quantity.DecimalMark;

/**
 * Reads a longitude or latitude as people write it: decimal degrees, degrees and minutes, or degrees, minutes and seconds,
 * with or without marks, with a sign or a letter (N S E W, L for leste, O for oeste and ouest) or word in front or behind.
 * What could be read in two ways is refused with both readings.
 */
final class DegreeText {
    private static final String NUMBER = "(\\d++(?:[.,]\\d++)?+)\\s*+";
    private static final String DEGREES = "(\u00b0|:|-|(?i:degrees|degr\u00e9s|grados|graus|deg|d))?+\\s*+";
    private static final String MINUTES = "('|:|-|(?i:min|mn|m))?+\\s*+";
    private static final String SECONDS = "(\"|(?i:sec|seg)\\.?+|[sS](?=\\s*+[nsewloNSEWLO]?+\\.?+$))?+\\s*+";
    private static final Pattern BODY = Pattern.compile("([+-]?)\\s*+" + NUMBER + DEGREES + "(?:" + NUMBER + MINUTES
            + "(?:" + NUMBER + SECONDS + ")?+)?+(\\p{L}*)\\.?");
    private static final Pattern IN_FRONT = Pattern.compile("(\\p{L}+)\\.?\\s*([+-]?\\s*\\d.*)");
    private static final Pattern SCIENTIFIC = Pattern.compile("[+-]?\\d+(\\.\\d*)?[eE][+-]?\\d+");
    private static final double SIXTY = 60;

    private final String written;
    private final boolean longitude;
    private final DecimalMark mark;

    private DegreeText(String written, boolean longitude, DecimalMark mark) {
        this.written = written.strip();
        this.longitude = longitude;
        this.mark = mark;
    }

    /**
     * The degrees in the text, east and north positive.
     *
     * @param longitude whether it stands in the place of a longitude, else of a latitude
     * @throws IllegalArgumentException in words for the user
     */
    static double read(String text, boolean longitude, DecimalMark mark) {
        return new DegreeText(text, longitude, mark).degrees();
    }

    private double degrees() {
        String plain = plain(written);
        if (SCIENTIFIC.matcher(plain).matches()) {
            return ranged(Double.parseDouble(plain));
        }
        Matcher front = IN_FRONT.matcher(plain);
        String before = front.matches() ? front.group(1) : "";
        Matcher body = BODY.matcher(front.matches() ? front.group(2) : plain);
        if (!body.matches()) {
            throw unreadable();
        }
        String behind = behind(body);
        if (!before.isEmpty() && !behind.isEmpty()) {
            throw unreadable();
        }
        double size = size(body);
        return ranged(signed(size, body.group(1), before + behind));
    }

    /** Typographic marks brought to the plain ones. */
    private static String plain(String text) {
        return text.replaceAll("[\u00a0\u2007\u2009\u202f]", " ")
                .replaceAll("[\u2212\u2013\u2014\u2010\u2011]", "-")
                .replaceAll("[\u2032\u2019\u2018\u201b\u00b4`\u02b9\u02c8\u02bc]", "'")
                .replaceAll("[\u2033\u201c\u201d\u201e\u201f\u02ba\u02dd]|''", "\"")
                .replaceAll("[\u00ba\u02da\u2218\u2070]", "\u00b0")
                .strip();
    }

    private IllegalArgumentException unreadable() {
        return new IllegalArgumentException("\"" + written + "\" is not a " + name() + "; give degrees such as "
                + (longitude ? "-56.78342, or 56\u00b047'00.3\"W" : "-6.12345, or 6\u00b007'24.4\"S"));
    }

    private String name() {
        return longitude ? "longitude" : "latitude";
    }

    /** The letter or word behind; an s there may be the mark of seconds. */
    private String behind(Matcher body) {
        String letters = body.group(8);
        String seconds = body.group(7);
        if (seconds == null || !seconds.equalsIgnoreCase("s") || !letters.isEmpty()) {
            return letters;
        }
        boolean lettered =
                body.group(3) != null && Character.isLetter(body.group(3).charAt(0));
        boolean small = seconds.equals("s");
        boolean unmarked = body.group(3) == null || body.group(3).matches("[:-]");
        if (lettered && small) {
            return "";
        }
        boolean smallMarks = lettered && Character.isLowerCase(body.group(3).charAt(0));
        if (unmarked || !small && (smallMarks || !lettered)) {
            return "S";
        }
        throw new IllegalArgumentException("\"" + written + "\" could end in seconds or in south; give "
                + plainExample(body) + "S or a minus sign for south, or " + plainExample(body) + "N for north");
    }

    private static String plainExample(Matcher body) {
        return body.group(2) + "\u00b0" + body.group(4) + "'" + body.group(6) + "\"";
    }

    private double size(Matcher body) {
        if (body.group(4) == null) {
            return decimal(body.group(2));
        }
        boolean seconds = body.group(6) != null;
        double degrees = part("degrees", body.group(2), true, Double.MAX_VALUE);
        double minutes = part("minutes", body.group(4), seconds, SIXTY);
        return degrees + (minutes + (seconds ? part("seconds", body.group(6), false, SIXTY) : 0) / SIXTY) / SIXTY;
    }

    private double part(String what, String number, boolean whole, double below) {
        double value = Double.parseDouble(number.replace(',', '.'));
        if (whole && !number.matches("\\d+")) {
            throw new IllegalArgumentException("\"" + written + "\": " + number + " " + what
                    + " have decimals and a finer part follows; give decimals in the last part alone");
        }
        if (value >= below) {
            throw new IllegalArgumentException(
                    "\"" + written + "\": " + number + " " + what + " are not allowed; give below 60");
        }
        return value;
    }

    /** Decimal degrees; a mark other than the table's is read where it can be nothing but decimal. */
    private double decimal(String number) {
        String fraction = number.matches("\\d+") ? "" : number.replaceAll(".*[.,]", "");
        boolean comma = number.indexOf(',') >= 0;
        String pointed = number.replace(',', '.');
        if (!comma && mark == DecimalMark.COMMA && fraction.length() == 3 && number.indexOf('.') >= 0) {
            throw new IllegalArgumentException("\"" + written + "\" could be " + number.replace(".", "") + " or "
                    + number.replace('.', ',') + "; give degrees with a decimal comma");
        }
        if (comma && mark == DecimalMark.POINT && !fraction.isEmpty() && fraction.length() < 3) {
            String minutes = fraction.length() == 1 ? fraction + "0" : fraction;
            if (Integer.parseInt(minutes) < SIXTY) {
                throw new IllegalArgumentException("\"" + written + "\" could be " + pointed + " degrees or "
                        + number.replaceAll(",.*", "") + " degrees " + minutes + " minutes; give " + pointed + ", or "
                        + number.replaceAll(",.*", "") + "\u00b0" + minutes + "'");
            }
        }
        return Double.parseDouble(pointed);
    }

    private double signed(double size, String sign, String letters) {
        if (letters.isEmpty()) {
            return sign.equals("-") ? -size : size;
        }
        char side = side(letters)
                .orElseThrow(() -> new IllegalArgumentException("\"" + written + "\": \"" + letters
                        + "\" is no direction; give " + (longitude ? "E or W" : "N or S")));
        boolean east = side == 'E' || side == 'W';
        if (east != longitude) {
            throw new IllegalArgumentException("\"" + written + "\" is a " + (east ? "longitude" : "latitude") + " ("
                    + letters + ") in the place of the " + name()
                    + "; swap the two: longitude is E or W, latitude N or S");
        }
        boolean negative = side == 'S' || side == 'W';
        if (sign.equals("-") && !negative || sign.equals("+") && negative) {
            throw new IllegalArgumentException(
                    "\"" + written + "\": its sign and its letter contradict each other; give "
                            + "one of the two (south and west are negative)");
        }
        return negative ? -size : size;
    }

    /** O is west, as in oeste and ouest; in the one language where it is east (Ost), the word is read. */
    private static Optional<Character> side(String letters) {
        return switch (letters.toLowerCase(Locale.ROOT)) {
            case "n", "north", "norte", "nord" -> Optional.of('N');
            case "s", "south", "sur", "sul", "sud" -> Optional.of('S');
            case "e", "east", "este", "est", "l", "leste", "ost" -> Optional.of('E');
            case "w", "west", "o", "oeste", "ouest" -> Optional.of('W');
            default -> Optional.empty();
        };
    }

    private double ranged(double degrees) {
        if (longitude && !(Math.abs(degrees) <= 180)) {
            throw new IllegalArgumentException(written + " is not allowed; give -180 to 180 deg");
        }
        if (!longitude && !(Math.abs(degrees) <= 90)) {
            throw new IllegalArgumentException(
                    written + " is not allowed; give -90 to 90 deg: longitude comes first, latitude second");
        }
        return degrees;
    }
}
