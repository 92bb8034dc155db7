// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;

/** The fixed tables of a GeoPackage. OGC 12-128r17, GeoPackage 1.3, annex C (table definition SQL) and annex F.3 (R-tree). */
final class GeoPackageTables {
    /** "GPKG" in ASCII, clause 1.1.1.1.1. */
    static final int APPLICATION_ID = 0x47504B47;
    /** Version 1.3.0, clause 1.1.1.1.1. */
    static final int USER_VERSION = 10300;

    static final int WGS_84 = 4326;

    private static final String WGS_84_WKT =
            "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563,"
                    + "AUTHORITY[\"EPSG\",\"7030\"]],AUTHORITY[\"EPSG\",\"6326\"]],PRIMEM[\"Greenwich\",0,AUTHORITY[\"EPSG\",\"8901\"]],"
                    + "UNIT[\"degree\",0.0174532925199433,AUTHORITY[\"EPSG\",\"9122\"]],AXIS[\"Latitude\",NORTH],"
                    + "AXIS[\"Longitude\",EAST],AUTHORITY[\"EPSG\",\"4326\"]]";

    static final List<String> STATEMENTS = List.of(
            "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY,"
                    + " organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL,"
                    + " description TEXT)",
            "CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE,"
                    + " description TEXT DEFAULT '', last_change DATETIME NOT NULL DEFAULT"
                    + " (strftime('%Y-%m-%dT%H:%M:%fZ','now')), min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE,"
                    + " srs_id INTEGER, CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES"
                    + " gpkg_spatial_ref_sys(srs_id))",
            "CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL,"
                    + " geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL,"
                    + " CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE"
                    + " (table_name), CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),"
                    + " CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id))",
            "CREATE TABLE gpkg_extensions (table_name TEXT, column_name TEXT, extension_name TEXT NOT NULL,"
                    + " definition TEXT NOT NULL, scope TEXT NOT NULL,"
                    + " CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name))",
            "INSERT INTO gpkg_spatial_ref_sys VALUES ('Undefined cartesian SRS', -1, 'NONE', -1, 'undefined',"
                    + " 'undefined cartesian coordinate reference system')",
            "INSERT INTO gpkg_spatial_ref_sys VALUES ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined',"
                    + " 'undefined geographic coordinate reference system')",
            "INSERT INTO gpkg_spatial_ref_sys VALUES ('WGS 84 geodetic', 4326, 'EPSG', 4326, '" + WGS_84_WKT
                    + "', 'longitude/latitude coordinates in decimal degrees on the WGS 84 spheroid')");

    /** Table of default styles as desktop GIS programs read it; common practice, no part of the standard. */
    static final String STYLES =
            "CREATE TABLE layer_styles (id INTEGER PRIMARY KEY NOT NULL, f_table_catalog TEXT(256),"
                    + " f_table_schema TEXT(256), f_table_name TEXT(256), f_geometry_column TEXT(256), styleName TEXT(30),"
                    + " styleQML TEXT, styleSLD TEXT, useAsDefault BOOLEAN, description TEXT, owner TEXT(30), ui TEXT(30),"
                    + " update_time DATETIME DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')))";

    private GeoPackageTables() {}

    /** The triggers that keep an R-tree true when a GIS edits the table: annex F.3, with T and C for table and column. */
    static List<String> triggers(String table) {
        String set =
                "minx = ST_MinX(NEW.geom), maxx = ST_MaxX(NEW.geom), miny = ST_MinY(NEW.geom), maxy = ST_MaxY(NEW.geom)";
        String add = "INSERT OR REPLACE INTO \"R\" VALUES (NEW.fid, ST_MinX(NEW.geom), ST_MaxX(NEW.geom),"
                + " ST_MinY(NEW.geom), ST_MaxY(NEW.geom));";
        String full = "(NEW.geom NOTNULL AND NOT ST_IsEmpty(NEW.geom))";
        String none = "(NEW.geom ISNULL OR ST_IsEmpty(NEW.geom))";
        String drop = "DELETE FROM \"R\" WHERE id = OLD.fid;";
        List<String> texts = List.of(
                "\"R_insert\" AFTER INSERT ON \"T\" WHEN " + full + " BEGIN " + add + " END",
                "\"R_update2\" AFTER UPDATE OF geom ON \"T\" WHEN OLD.fid = NEW.fid AND " + none + " BEGIN " + drop
                        + " END",
                "\"R_update4\" AFTER UPDATE ON \"T\" WHEN OLD.fid != NEW.fid AND " + none
                        + " BEGIN DELETE FROM \"R\" WHERE id IN (OLD.fid, NEW.fid); END",
                "\"R_update5\" AFTER UPDATE ON \"T\" WHEN OLD.fid != NEW.fid AND " + full + " BEGIN " + drop + " " + add
                        + " END",
                "\"R_update6\" AFTER UPDATE OF geom ON \"T\" WHEN OLD.fid = NEW.fid AND " + full
                        + " AND (OLD.geom NOTNULL AND NOT ST_IsEmpty(OLD.geom)) BEGIN UPDATE \"R\" SET " + set
                        + " WHERE id = NEW.fid; END",
                "\"R_update7\" AFTER UPDATE OF geom ON \"T\" WHEN OLD.fid = NEW.fid AND " + full
                        + " AND (OLD.geom ISNULL OR ST_IsEmpty(OLD.geom)) BEGIN " + add + " END",
                "\"R_delete\" AFTER DELETE ON \"T\" WHEN OLD.geom NOT NULL BEGIN " + drop + " END");
        return texts.stream()
                .map(text -> "CREATE TRIGGER "
                        + text.replace("\"R", "\"rtree_" + table + "_geom").replace("\"T\"", "\"" + table + "\""))
                .toList();
    }
}
