// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.NoSuchAuthorityCodeException;
import org.geotools.api.referencing.crs.CRSAuthorityFactory;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.referencing.epsg.esri.EsriExtension;
import org.silverwake.geo.GeoDataException;

/**
 * Coordinate systems by code. WGS 84 (4326, CRS84), its UTM zones (32601-32660, 32701-32760) and web Mercator (3857) come
 * from a formula; ESRI codes from the library's list; other EPSG codes from the EPSG register, which the library keeps
 * in a database that takes about a second to open and 34 MB in the user's cache folder the first time.
 */
final class CrsCodes {
    private static final Pattern CODE = Pattern.compile(
            "(?i)(?:urn:(?:ogc|x-ogc):def:crs:|https?://www\\.opengis\\.net/def/crs/)?(EPSG|ESRI|OGC|CRS)?[:/]*(?:[0-9.]*[:/]+)?(CRS84|[0-9]{1,9})");
    private static final String WGS84 =
            "GEOGCS[\"WGS 84\",DATUM[\"World Geodetic System 1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
                    + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.017453292519943295],AUTHORITY[\"EPSG\",\"4326\"]]";
    private static final int UTM_NORTH = 32600;
    private static final int UTM_SOUTH = 32700;
    private static final int ZONES = 60;

    private CrsCodes() {}

    /** The code in one spelling, such as EPSG:32726, or nothing where the text is no code. */
    static Optional<String> normalize(String text) {
        Matcher matcher = CODE.matcher(text.strip());
        if (!matcher.matches() || matcher.group(1) == null && !matcher.group(2).equalsIgnoreCase("CRS84")) {
            return Optional.empty();
        }
        if (matcher.group(2).equalsIgnoreCase("CRS84")) {
            return Optional.of("OGC:CRS84");
        }
        return Optional.of(matcher.group(1).toUpperCase(Locale.ROOT) + ":" + matcher.group(2));
    }

    /** Well-known text of a code that needs no database. */
    static Optional<String> text(String code) {
        if (code.equals("OGC:CRS84") || code.equals("EPSG:4326")) {
            return Optional.of(WGS84);
        }
        if (code.startsWith("ESRI:")) {
            return Optional.ofNullable(Esri.LIST.getProperty(code.substring(5)));
        }
        int number = Integer.parseInt(code.substring(code.indexOf(':') + 1));
        if (number > UTM_NORTH && number <= UTM_NORTH + ZONES) {
            return Optional.of(utm(number - UTM_NORTH, "N", 0, number));
        }
        if (number > UTM_SOUTH && number <= UTM_SOUTH + ZONES) {
            return Optional.of(utm(number - UTM_SOUTH, "S", 10_000_000, number));
        }
        if (number == 3857) {
            return Optional.of("PROJCS[\"WGS 84 / Pseudo-Mercator\"," + WGS84
                    + ",PROJECTION[\"Popular Visualisation Pseudo Mercator\"],UNIT[\"metre\",1],"
                    + "AUTHORITY[\"EPSG\",\"3857\"]]");
        }
        return Optional.empty();
    }

    private static String utm(int zone, String half, int falseNorthing, int code) {
        return "PROJCS[\"WGS 84 / UTM zone " + zone + half + "\"," + WGS84 + ",PROJECTION[\"Transverse_Mercator\"],"
                + "PARAMETER[\"central_meridian\"," + (zone * 6 - 183) + "],PARAMETER[\"latitude_of_origin\",0],"
                + "PARAMETER[\"scale_factor\",0.9996],PARAMETER[\"false_easting\",500000],"
                + "PARAMETER[\"false_northing\"," + falseNorthing + "],UNIT[\"metre\",1],"
                + "AUTHORITY[\"EPSG\",\"" + code + "\"]]";
    }

    /** A system from the EPSG register, longitude or easting first. */
    static CoordinateReferenceSystem fromRegister(String code) {
        try {
            return Register.FACTORY.createCoordinateReferenceSystem(code);
        } catch (NoSuchAuthorityCodeException e) {
            throw new GeoDataException(
                    "coordinate system " + code + ": not in the EPSG register that comes with the program; check the"
                            + " code, or give the system as well-known text",
                    e);
        } catch (FactoryException e) {
            throw new GeoDataException(
                    "coordinate system " + code + ": cannot be had from the EPSG register (" + e.getMessage()
                            + "); give it as well-known text, or, if the register itself is damaged, delete "
                            + Register.FOLDER + " and try again",
                    e);
        }
    }

    /** The register's way from a system to WGS 84, longitude first. */
    static MathTransform registerWay(CoordinateReferenceSystem system) throws FactoryException {
        return CRS.findMathTransform(system, DefaultGeographicCRS.WGS84, true);
    }

    /** Whether the register knows how the system's datum lies to WGS 84. */
    static boolean knowsWay(CoordinateReferenceSystem system) {
        try {
            return CRS.findMathTransform(system, DefaultGeographicCRS.WGS84, false) != null;
        } catch (FactoryException unknown) {
            return false;
        }
    }

    static boolean isGeographic(CoordinateReferenceSystem system) {
        return system instanceof GeographicCRS;
    }

    /** Loaded on first use. */
    private static final class Esri {
        static final Properties LIST = load();

        private static Properties load() {
            Properties list = new Properties();
            try (InputStream in = EsriExtension.class.getResourceAsStream("esri.properties")) {
                if (in != null) {
                    list.load(in);
                }
            } catch (IOException e) {
                throw new GeoDataException("list of ESRI codes: cannot be read; give well-known text instead", e);
            }
            return list;
        }
    }

    /** Opened on first use. */
    private static final class Register {
        static final File FOLDER = folder();
        static final CRSAuthorityFactory FACTORY = open();

        private static CRSAuthorityFactory open() {
            GeoToolsQuiet.please();
            if (System.getProperty("EPSG-HSQL.directory") == null) {
                System.setProperty("EPSG-HSQL.directory", FOLDER.getPath());
            }
            System.setProperty("hsqldb.reconfig_logging", "false");
            return CRS.getAuthorityFactory(true);
        }

        /** A folder of the user's own: in a shared temporary folder another user's half copy would be in the way. */
        private static File folder() {
            String local = System.getenv("LOCALAPPDATA");
            String cache = System.getenv("XDG_CACHE_HOME");
            File base = local != null
                    ? new File(local)
                    : cache != null ? new File(cache) : new File(System.getProperty("user.home"), ".cache");
            File own = new File(base, "silverwake/epsg");
            if ((own.isDirectory() || own.mkdirs()) && own.canWrite()) {
                return own;
            }
            return new File(System.getProperty("java.io.tmpdir"), "silverwake-epsg-" + System.getProperty("user.name"));
        }
    }
}
