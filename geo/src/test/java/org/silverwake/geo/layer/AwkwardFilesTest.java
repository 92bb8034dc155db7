// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;

/** The awkward files of the open data, section 5 of its README. */
class AwkwardFilesTest {
    @Test
    void nullShapesOfPoints() {
        VectorLayer layer = OpenData.read("awkward/mb_null.shp");
        assertThat(layer.features()).hasSize(9);
        assertThat(layer.features().stream().filter(f -> f.geometry() == null)).hasSize(4);
    }

    @Test
    void anEmptyShapefileIsRefused() {
        assertThatThrownBy(OpenData.reading("awkward/mb_empty.shp"))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("\"mb_empty\" has no features");
    }

    @Test
    void westernTextWithoutACpg() {
        assertThat(OpenData.read("awkward/mb_latin1-property.shp")
                        .features()
                        .get(0)
                        .attributes())
                .containsEntry("name", "M\u00e9xico");
    }

    @Test
    void datesAreDates() {
        VectorLayer layer = OpenData.read("awkward/mb_date-property.shp");
        assertThat(layer.features().get(0).attributes()).containsEntry("date", LocalDate.of(2013, 1, 2));
    }

    @Test
    void aShpAloneIsReadInSequence() {
        VectorLayer layer = OpenData.read("awkward/mb_polylinem.shp", "EPSG:4326");
        assertThat(layer.features()).hasSize(2);
        assertThat(layer.warnings()).anyMatch(w -> w.contains(".dbf file is missing"));
        assertThat(layer.features().get(0).geometry().getGeometryType()).isEqualTo("LineString");
    }

    @Test
    void aByteTooMuchIsWarnedOf() {
        VectorLayer layer = OpenData.read("awkward/pyshp_corrupt_too_long.shp", "EPSG:4326");
        assertThat(layer.features()).hasSize(10);
        assertThat(layer.warnings()).anyMatch(w -> w.contains("1145 bytes") && w.contains("1144"));
    }

    @Test
    void aShapefileInAFolderInAZip() {
        VectorLayer layer = OpenData.read("awkward/pyshp_REL.zip");
        assertThat(layer.features()).isNotEmpty().allMatch(f -> f.geometry().getArea() > 0);
        assertThat(layer.crs().name()).contains("MGI_Austria_Lambert");
        // its datum's shift is not in the file
        assertThat(layer.warnings()).anyMatch(w -> w.contains("some hundred meters"));
    }

    @Test
    void anUnknownShiftMayBeGivenByTheUser() {
        VectorLayer layer = OpenData.read("awkward/pyshp_REL.zip", "EPSG:31287");
        assertThat(layer.crs().name()).contains("EPSG:31287");
        assertThat(layer.warnings()).isEmpty();
    }

    @Test
    void measuredLinesWithoutAPrjNeedASystem() {
        assertThatThrownBy(OpenData.reading("awkward/sf_storms_xyzm.shp"))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("states no coordinate system; give rivers.crs");
        VectorLayer layer = OpenData.read("awkward/sf_storms_xyzm.shp", "EPSG:4326");
        assertThat(layer.features()).hasSize(71);
        Coordinate first = layer.features().get(0).geometry().getCoordinate();
        assertThat(first.getM()).isNotNaN();
        assertThat(layer.features())
                .anyMatch(f -> f.geometry().getEnvelopeInternal().getMaxX() == 0);
    }

    @Test
    void heightAndMeasureOfAGeoPackage() {
        VectorLayer layer = OpenData.read("awkward/pyogrio_line_zm.gpkg");
        Coordinate first = layer.features().get(0).geometry().getCoordinate();
        assertThat(first.x).isCloseTo(-123.2108, within(1e-4));
        assertThat(first.getZ()).isNotNaN();
        assertThat(first.getM()).isNotNaN();
    }

    @Test
    void severalLineLayersAreListed() {
        assertThatThrownBy(OpenData.reading("awkward/nga_gdal_sample.gpkg"))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("several layers: linestring2d (linestring), multilinestring2d")
                .hasMessageContaining("name one as layer");
    }

    @Test
    void everyTypeOfGeometryIsKept() {
        Path file = OpenData.file("awkward/nga_gdal_sample.gpkg");
        for (String layer :
                List.of("point", "linestring", "polygon", "multipoint", "multilinestring", "multipolygon")) {
            for (String dimension : List.of("2d", "3d")) {
                boolean own = List.of("linestring2d", "polygon2d").contains(layer + dimension);
                VectorLayer read = Layers.read(
                        OpenData.with(OpenData.source(file), layer + dimension, own ? null : "EPSG:4326", null, null));
                assertThat(read.features()).as(layer + dimension).hasSize(2);
                Geometry geometry = read.features().get(0).geometry() == null
                        ? read.features().get(1).geometry()
                        : read.features().get(0).geometry();
                assertThat(geometry.getGeometryType()).isEqualToIgnoringCase(layer);
                assertThat(read.features().stream().filter(f -> f.geometry() == null))
                        .hasSize(1);
            }
        }
    }

    @Test
    void aTableWithoutGeometryIsNoLayer() {
        assertThatThrownBy(OpenData.reading("awkward/sf_nospatial.gpkg"))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("has no features");
    }

    @Test
    void theLineLayerIsChosenBesidePoints() {
        Path file = OpenData.file("awkward/hydroloom_two_layers.gpkg");
        assertThat(OpenData.read("awkward/hydroloom_two_layers.gpkg").name()).isEqualTo("reaches");
        VectorLayer sites = Layers.read(OpenData.with(OpenData.source(file), "sites", null, null, null));
        assertThat(sites.features())
                .hasSize(10)
                .allMatch(f -> f.geometry().getGeometryType().equals("Point"));
        assertThatThrownBy(() -> Layers.read(OpenData.with(OpenData.source(file), "river", null, null, null)))
                .hasMessageContaining("no layer \"river\"; the layers are reaches (multilinestring), sites (point)");
    }

    @Test
    void pointsWithoutASpatialIndex() {
        VectorLayer layer = OpenData.read("awkward/planetiler_geopackage-unindexed.gpkg");
        assertThat(layer.features()).hasSize(86);
        assertThat(layer.features().get(0).attributes()).containsEntry("name", "Van D\u00f6rn Street");
    }

    @Test
    void aPlainDatabaseIsRefused() {
        assertThatThrownBy(OpenData.reading("awkward/nga_test.gpkg"))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("SQLite database but no GeoPackage");
    }

    @Test
    void nullAndDoubleIds() {
        Path file = OpenData.file("awkward/gdal_ids_0_1_null_1_null.json");
        VectorLayer layer = Layers.read(OpenData.with(OpenData.source(file), null, null, null, "id"));
        assertThat(layer.features().stream().map(LayerFeature::id)).containsExactly("0", "1", "#3", "1", "#5");
        assertThat(layer.warnings())
                .containsExactly(
                        "2 features have no value in the id column \"id\"; they are named by their place in the file, such as #1");
        assertThat(layer.features()).allMatch(f -> f.geometry() == null);
    }

    @Test
    void aBareGeometryIsALayer() {
        VectorLayer layer = OpenData.read("awkward/gf_multilinestring-xyz.geojson");
        assertThat(layer.features()).hasSize(1);
        assertThat(layer.features().get(0).geometry().getGeometryType()).isEqualTo("MultiLineString");
        assertThat(layer.features().get(0).geometry().getCoordinate().getZ()).isEqualTo(5.2);
    }

    @Test
    void aCrsMemberOfDegrees() {
        VectorLayer layer = OpenData.read("awkward/hydroloom_simple_diversions.geojson");
        assertThat(layer.features()).hasSize(32);
        assertThat(layer.crs().name()).contains("CRS84");
    }

    @Test
    void mixedTypesInOneCollection() {
        assertThat(OpenData.read("awkward/fiona_trio.geojson").features().stream()
                        .map(f -> f.geometry().getGeometryType()))
                .containsExactly("Point", "LineString", "Polygon");
    }

    /** The table of the North Carolina streams without its .shx reads the same. */
    @Test
    void theIndexIsNotNeeded(@TempDir Path folder) throws Exception {
        Path shp = OpenData.file("networks/nc_streams_shp/streams.shp");
        for (String ending : List.of("shp", "dbf", "prj")) {
            Files.copy(shp.resolveSibling("streams." + ending), folder.resolve("streams." + ending));
        }
        VectorLayer without = Layers.read(OpenData.source(folder.resolve("streams.shp")));
        VectorLayer with = Layers.read(OpenData.source(shp));
        assertThat(without.features()).hasSameSizeAs(with.features());
        assertThat(without.features().get(8000).attributes())
                .isEqualTo(with.features().get(8000).attributes());
        assertThat(without.features()
                        .get(8000)
                        .geometry()
                        .equalsExact(with.features().get(8000).geometry()))
                .isTrue();
    }
}
