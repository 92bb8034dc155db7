// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.geo.GeoDataException;

/** Well-known text of both versions and of the dialects that programs write. */
class WktTest {
    /** PRINTED: references have 9 decimals of a degree. */
    private static final Offset<Double> PRINTED = within(2e-8);
    /** ROUNDING: 1e-7 degrees, 1 cm, for datum shifts computed by other formulas. */
    private static final Offset<Double> SHIFTED = within(1e-6);

    private static final String ELLIPSOID = "ELLIPSOID[\"GRS 1980\",6378137,298.257222101,LENGTHUNIT[\"metre\",1]]";
    private static final String DEGREE = "ANGLEUNIT[\"degree\",0.0174532925199433]";
    private static final String ALBERS = "PROJCRS[\"Albers\",BASEGEOGCRS[\"NAD83\",DATUM[\"North American Datum 1983\","
            + ELLIPSOID + "],PRIMEM[\"Greenwich\",0," + DEGREE + "],ID[\"EPSG\",4269]],CONVERSION[\"unnamed\","
            + "METHOD[\"Albers Equal Area\",ID[\"EPSG\",9822]],PARAMETER[\"Latitude of false origin\",23," + DEGREE
            + ",ID[\"EPSG\",8821]],PARAMETER[\"Longitude of false origin\",-96," + DEGREE
            + "],PARAMETER[\"Latitude of 1st standard parallel\",29.5," + DEGREE
            + "],PARAMETER[\"Latitude of 2nd standard parallel\",45.5," + DEGREE
            + "],PARAMETER[\"Easting at false origin\",0,LENGTHUNIT[\"metre\",1]],"
            + "PARAMETER[\"Northing at false origin\",0,LENGTHUNIT[\"metre\",1]]],CS[Cartesian,2],"
            + "AXIS[\"northing (Y)\",north,ORDER[1]],AXIS[\"easting (X)\",east,ORDER[2]],LENGTHUNIT[\"metre\",1],"
            + "USAGE[SCOPE[\"GIS.\"],AREA[\"somewhere\"],BBOX[24.41,-124.79,49.38,-66.91]]]";

    private static final String CLARKE =
            "BASEGEOGCRS[\"PRS92\",DATUM[\"Philippine 1992\",ELLIPSOID[\"Clarke 1866\",6378206.4,294.978698213898,"
                    + "LENGTHUNIT[\"metre\",1]]],PRIMEM[\"Greenwich\",0," + DEGREE + "]]";

    /** Reference: PROJ 9.1.1, +proj=aea on GRS80. */
    @Test
    void readsTheNewerVersionWithItsAxesInAnyOrder() {
        double[] lonLat = LayerCrs.of(ALBERS).toLonLat(1_520_000, 1_550_000);
        assertThat(lonLat[0]).isCloseTo(-78.945750708, PRINTED);
        assertThat(lonLat[1]).isCloseTo(35.772346691, PRINTED);
    }

    /** As programs write the system of a layer whose ellipsoid alone is known. */
    @Test
    void readsABoundSystemOfDegrees() {
        LayerCrs crs = LayerCrs.of("BOUNDCRS[SOURCECRS[GEOGCRS[\"GRS 1980(IUGG, 1980)\",DATUM[\"unknown\"," + ELLIPSOID
                + "],PRIMEM[\"Greenwich\",0," + DEGREE + "],CS[ellipsoidal,2],AXIS[\"latitude\",north,ORDER[1],"
                + DEGREE
                + "],AXIS[\"longitude\",east,ORDER[2]," + DEGREE + "]]],TARGETCRS[GEOGCRS[\"WGS 84\",DATUM[\"World"
                + " Geodetic System 1984\",ELLIPSOID[\"WGS 84\",6378137,298.257223563]]]],"
                + "ABRIDGEDTRANSFORMATION[\"to WGS84\",METHOD[\"Geocentric translations (geog2D domain)\"],"
                + "PARAMETER[\"X-axis translation\",0],PARAMETER[\"Y-axis translation\",0],"
                + "PARAMETER[\"Z-axis translation\",0]]]");
        assertThat(crs.isDegrees()).isTrue();
        assertThat(crs.toLonLat(-93.7, 36.5)).containsExactly(-93.7, 36.5);
    }

    /**
     * Reference: PROJ 9.1.1, cs2cs +proj=utm +zone=51 +ellps=clrk66
     * +towgs84=-127.62,-67.24,-47.04,-3.068,4.903,1.578,-1.06 at 500000 800000.
     */
    @Test
    void aBoundSystemsSevenParametersAreUsedInBothConventions() {
        double[] vector = LayerCrs.of(
                        bound("Position Vector transformation (geog2D domain)", "-3.068", "4.903", "1.578"))
                .toLonLat(500_000, 800_000);
        double[] frame = LayerCrs.of(bound("Coordinate Frame rotation (geog2D domain)", "3.068", "-4.903", "-1.578"))
                .toLonLat(500_000, 800_000);
        assertThat(vector[0]).isCloseTo(123.001536435, SHIFTED);
        assertThat(vector[1]).isCloseTo(7.236978152, SHIFTED);
        assertThat(frame).containsExactly(vector);
    }

    private static String bound(String method, String rx, String ry, String rz) {
        return "BOUNDCRS[SOURCECRS[PROJCRS[\"zone 51\"," + CLARKE + ",CONVERSION[\"UTM zone 51N\",METHOD[\"Transverse"
                + " Mercator\"],PARAMETER[\"Latitude of natural origin\",0," + DEGREE
                + "],PARAMETER[\"Longitude of natural origin\",123," + DEGREE
                + "],PARAMETER[\"Scale factor at natural origin\",0.9996,SCALEUNIT[\"unity\",1]],"
                + "PARAMETER[\"False easting\",500000,LENGTHUNIT[\"metre\",1]],"
                + "PARAMETER[\"False northing\",0,LENGTHUNIT[\"metre\",1]]],CS[Cartesian,2],AXIS[\"(E)\",east],"
                + "AXIS[\"(N)\",north],LENGTHUNIT[\"metre\",1]]],TARGETCRS[GEOGCRS[\"WGS 84\"]],"
                + "ABRIDGEDTRANSFORMATION[\"to WGS84\",METHOD[\"" + method
                + "\"],PARAMETER[\"X-axis translation\",-127.62],"
                + "PARAMETER[\"Y-axis translation\",-67.24],PARAMETER[\"Z-axis translation\",-47.04],"
                + "PARAMETER[\"X-axis rotation\"," + rx + "],PARAMETER[\"Y-axis rotation\"," + ry
                + "],PARAMETER[\"Z-axis rotation\"," + rz + "],PARAMETER[\"Scale difference\",0.99999894]]]";
    }

    /** Feet, false easting in meters: the parameter's own unit counts. Reference: PROJ 9.1.1 in m. */
    @Test
    void parametersKeepTheirOwnUnit() {
        String feet = ALBERS.replace(
                        "false origin\",0,LENGTHUNIT[\"metre\",1]]]", "false origin\",1000,LENGTHUNIT[\"metre\",1]]]")
                .replace("LENGTHUNIT[\"metre\",1],USAGE", "LENGTHUNIT[\"foot\",0.3048],USAGE");
        double[] lonLat = LayerCrs.of(feet).toLonLat(1_520_000 / 0.3048, 1_551_000 / 0.3048);
        assertThat(lonLat[0]).isCloseTo(-78.945750708, PRINTED);
        assertThat(lonLat[1]).isCloseTo(35.772346691, PRINTED);
    }

    /** Reference: PROJ 9.1.1, EPSG:3031 at 1000000 -500000. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "PROJECTION[\"Polar_Stereographic\"],PARAMETER[\"latitude_of_origin\",-71],PARAMETER[\"central_meridian\",0]",
                "PROJECTION[\"Stereographic_South_Pole\"],PARAMETER[\"standard_parallel_1\",-71],"
                        + "PARAMETER[\"central_meridian\",0]"
            })
    void polarSystemsBelongToTheirStandardParallel(String projection) {
        double[] lonLat = LayerCrs.of("PROJCS[\"polar\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS"
                        + " 84\",6378137,298.257223563]],PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]],"
                        + projection + ",PARAMETER[\"false_easting\",0],PARAMETER[\"false_northing\",0],UNIT[\"m\",1]]")
                .toLonLat(1_000_000, -500_000);
        assertThat(lonLat[0]).isCloseTo(116.565051177, PRINTED);
        assertThat(lonLat[1]).isCloseTo(-79.736420851, PRINTED);
    }

    /** In one dialect the prime meridian is in degrees although the unit is the gon. Paris: 2.33722917 E (EPSG:8903). */
    @Test
    void aPrimeMeridianInDegreesBesideGonsIsUnderstood() {
        LayerCrs crs = LayerCrs.of("GEOGCS[\"GCS_Paris\",DATUM[\"D_x\",SPHEROID[\"GRS_1980\",6378137,298.257222101]],"
                + "PRIMEM[\"Paris\",2.33722917],UNIT[\"Grad\",0.0157079632679489]]");
        double[] lonLat = crs.toLonLat(0, 50);
        assertThat(lonLat[0]).isCloseTo(2.33722917, SHIFTED);
        assertThat(lonLat[1]).isCloseTo(45, SHIFTED);
    }

    @Test
    void aVerticalSystemBesideTheHorizontalOneIsPassedOver() {
        String horizontal = "GEOGCS[\"a\",DATUM[\"b\",SPHEROID[\"c\",6378137,298.257223563]],PRIMEM[\"Greenwich\",0],"
                + "UNIT[\"degree\",0.0174532925199433]]";
        String vertical = "VERT_CS[\"h\",VERT_DATUM[\"d\",2005],UNIT[\"metre\",1]]";
        assertThat(LayerCrs.of("COMPD_CS[\"both\"," + horizontal + "," + vertical + "]")
                        .toLonLat(10, 20))
                .containsExactly(10, 20);
        assertThat(LayerCrs.of(horizontal + ",VERTCS[\"h\",VDATUM[\"d\"],UNIT[\"Meter\",1]]")
                        .toLonLat(10, 20))
                .containsExactly(10, 20);
    }

    @Test
    void aMissingPartIsNamed() {
        assertThatThrownBy(() -> LayerCrs.of(ALBERS.replace("CONVERSION", "OTHER")))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("PROJCRS[\"Albers\"] lacks its CONVERSION");
    }

    @Test
    void aMethodThatIsNotKnownIsNamed() {
        assertThatThrownBy(() -> LayerCrs.of(ALBERS.replace("Albers Equal Area", "Folded Napkin")))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("Folded Napkin")
                .hasMessageContaining("rivers.crs");
    }
}
