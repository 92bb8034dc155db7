// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.image.RenderedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.geotools.api.parameter.GeneralParameterValue;
import org.geotools.api.parameter.ParameterValue;
import org.geotools.api.referencing.datum.PixelInCell;
import org.geotools.coverage.grid.GridCoverage2D;
import org.geotools.coverage.grid.io.AbstractGridFormat;
import org.geotools.coverage.util.CoverageUtilities;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.referencing.wkt.Formattable;
import org.geotools.util.factory.Hints;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.ElevationSource;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.LayerCrs;

/**
 * A raster of ground heights. A height is interpolated between the centers of the four nearest cells (bilinear); where
 * one of them that counts has no data, or outside of the raster, there is none. Longitudes may be a whole turn away from
 * how the raster counts them. 4 bytes a cell, of large rasters in a temporary file.
 */
public final class ElevationModel implements ElevationSource {
    private static final long MOST_CELLS = 200_000_000;
    /** Cells that are read at once, unless the file's own pieces are smaller [-]. */
    private static final int MOST_AT_ONCE = 4_000_000;
    /** From a cell's center to its edge, with room for rounding in the raster's numbers [cells]. */
    private static final double HALF = 0.5 + 1e-6;

    /** How the reader begins its word on a file without a place. */
    private static final String NO_PLACE = "Raster to Model Transformation";

    private static final double FULL_TURN = 360;

    private final Path file;
    private final CellNumbers heights;
    private final int columns;
    private final int rows;
    private final AffineTransform toWorld;
    private final AffineTransform toCell;
    private final LayerCrs crs;
    private final double toMeters;

    private ElevationModel(
            Path file, RenderedImage image, AffineTransform toWorld, LayerCrs crs, double noData, double toMeters)
            throws NoninvertibleTransformException {
        this.file = file;
        this.columns = image.getWidth();
        this.rows = image.getHeight();
        this.toWorld = toWorld;
        this.toCell = toWorld.createInverse();
        this.crs = crs;
        this.toMeters = toMeters;
        this.heights = HeightTiles.read(image, noData, toMeters);
    }

    /**
     * Reads a GeoTIFF; its first band holds the heights.
     *
     * @param file the file
     * @param toMeters factor from its unit to meters [-], above 0
     * @throws GeoDataException if it is missing, no GeoTIFF, without a coordinate system, or too large
     */
    public static ElevationModel read(Path file, double toMeters) {
        return read(file, toMeters, Optional.empty());
    }

    /**
     * Reads a GeoTIFF whose coordinate system is given for the case that it has none.
     *
     * @param file the file
     * @param toMeters factor from its unit to meters [-], above 0
     * @param crs code or well-known text, taken in place of the file's own
     * @throws GeoDataException if it is missing, no GeoTIFF, without a coordinate system, or too large
     */
    public static ElevationModel read(Path file, double toMeters, Optional<String> crs) {
        if (!Files.isRegularFile(file)) {
            throw new GeoDataException(
                    file + ": there is no such elevation file; give a GeoTIFF, or leave rivers.elevation out");
        }
        try {
            Optional<LayerCrs> known = known(file, crs);
            Hints hints = known.isPresent()
                    ? new Hints(Hints.DEFAULT_COORDINATE_REFERENCE_SYSTEM, DefaultGeographicCRS.WGS84)
                    : null;
            return open(file, toMeters, known, hints);
        } catch (OutOfMemoryError e) {
            throw new GeoDataException(
                    file + ": is written in pieces too large for the memory that Java may use; write it again in tiles"
                            + " (gdal_translate -co TILED=YES -co COMPRESS=DEFLATE OLD NEW), or set"
                            + " SILVERWAKE_JAVA_OPTIONS=-Xmx4g",
                    e);
        } catch (IOException | RuntimeException | NoninvertibleTransformException e) {
            if (e instanceof GeoDataException known) {
                throw known;
            }
            throw new GeoDataException(
                    file + ": cannot be read as a GeoTIFF elevation raster (" + reason(e)
                            + "); give a GeoTIFF with one band of heights that says where it lies",
                    e);
        }
    }

    private static Optional<LayerCrs> known(Path file, Optional<String> given) throws IOException {
        Optional<String> text = given.isPresent() ? given : GeoKeys.code(file);
        return text.map(LayerCrs::of);
    }

    private static ElevationModel open(Path file, double toMeters, Optional<LayerCrs> known, Hints hints)
            throws IOException, NoninvertibleTransformException {
        GeoTiffReader reader = new GeoTiffReader(file.toFile(), hints);
        GridCoverage2D coverage = null;
        try {
            coverage = reader.read((GeneralParameterValue[]) null);
            RenderedImage image = coverage.getRenderedImage();
            if ((long) image.getTileWidth() * image.getTileHeight() > MOST_AT_ONCE) {
                coverage.dispose(true);
                coverage = reader.read(new GeneralParameterValue[] {bands(image.getWidth())});
                image = coverage.getRenderedImage();
            }
            if ((long) image.getWidth() * image.getHeight() > MOST_CELLS) {
                throw new GeoDataException(file + ": has " + image.getWidth() + " x " + image.getHeight()
                        + " cells; at most " + MOST_CELLS / 1_000_000 + " million are read; cut it to the basin");
            }
            AffineTransform toWorld =
                    new AffineTransform((AffineTransform) reader.getOriginalGridToWorld(PixelInCell.CELL_CENTER));
            var noData = CoverageUtilities.getNoDataProperty(coverage);
            LayerCrs crs = known.orElseGet(() -> own(file, reader));
            return new ElevationModel(
                    file, image, toWorld, crs, noData == null ? Double.NaN : noData.getAsSingleValue(), toMeters);
        } finally {
            if (coverage != null) {
                coverage.dispose(true);
            }
            reader.dispose();
        }
    }

    /** A file that is one large strip is read in bands of rows. */
    private static ParameterValue<String> bands(int columns) {
        ParameterValue<String> size = AbstractGridFormat.SUGGESTED_TILE_SIZE.createValue();
        size.setValue(columns + "," + Math.max(1, MOST_AT_ONCE / columns));
        return size;
    }

    private static LayerCrs own(Path file, GeoTiffReader reader) {
        if (reader.getCoordinateReferenceSystem() instanceof Formattable crs
                && !(crs instanceof org.geotools.referencing.crs.DefaultEngineeringCRS)) {
            return LayerCrs.of(crs.toWKT(0));
        }
        throw new GeoDataException(file + ": says no coordinate system; give a raster that does");
    }

    private static String reason(Exception e) {
        String message = e.getMessage();
        if (message == null) {
            return e.getClass().getSimpleName();
        }
        return message.startsWith(NO_PLACE)
                ? "it does not say where its cells lie on the ground"
                : message.lines().findFirst().orElse("");
    }

    @Override
    public OptionalDouble elevation(double longitude, double latitude) {
        double wrapped = Geodesy.wrap(longitude);
        OptionalDouble height = height(wrapped, latitude);
        if (height.isPresent() || !crs.isDegrees()) {
            return height;
        }
        return height(wrapped < 0 ? wrapped + FULL_TURN : wrapped - FULL_TURN, latitude);
    }

    private OptionalDouble height(double longitude, double latitude) {
        double[] xy;
        try {
            xy = crs.fromLonLat(longitude, latitude);
        } catch (GeoDataException outside) {
            return OptionalDouble.empty();
        }
        Point2D cell = toCell.transform(new Point2D.Double(xy[0], xy[1]), null);
        double x = cell.getX();
        double y = cell.getY();
        if (!(x >= -HALF && x <= columns - HALF && y >= -HALF && y <= rows - HALF)) {
            return OptionalDouble.empty();
        }
        x = Math.max(0, Math.min(columns - 1, x));
        y = Math.max(0, Math.min(rows - 1, y));
        return between(x, y);
    }

    private OptionalDouble between(double x, double y) {
        int left = (int) Math.min(Math.floor(x), Math.max(0, columns - 2));
        int top = (int) Math.min(Math.floor(y), Math.max(0, rows - 2));
        double sum = 0;
        for (int dy = 0; dy <= 1; dy++) {
            for (int dx = 0; dx <= 1; dx++) {
                double weight = (dx == 0 ? 1 - (x - left) : x - left) * (dy == 0 ? 1 - (y - top) : y - top);
                if (weight > 0) {
                    float height = heights.heightAt((top + dy) * columns + left + dx);
                    if (Float.isNaN(height)) {
                        return OptionalDouble.empty();
                    }
                    sum += weight * height;
                }
            }
        }
        return OptionalDouble.of(sum * toMeters);
    }

    /** Height of a cell, counted row by row [m]; NaN where there is none. */
    double height(int cell) {
        return heights.heightAt(cell) * toMeters;
    }

    /**
     * Where a place lies in the raster: column and row, whole at the centers of cells, also outside of it; NaN where the
     * raster's coordinate system does not reach. Longitudes count as the raster counts them.
     */
    Point2D toCell(double longitude, double latitude) {
        try {
            double[] xy = crs.fromLonLat(Geodesy.wrap(longitude), latitude);
            if (crs.isDegrees()) {
                double middle = toWorld(columns / 2.0, rows / 2.0).getX();
                xy[0] -= FULL_TURN * Math.rint((xy[0] - middle) / FULL_TURN);
            }
            return toCell.transform(new Point2D.Double(xy[0], xy[1]), null);
        } catch (GeoDataException outside) {
            return new Point2D.Double(Double.NaN, Double.NaN);
        }
    }

    /** Longitude and latitude of a place in the raster, WGS 84 degrees. */
    double[] toLonLat(double column, double row) {
        Point2D world = toWorld(column, row);
        try {
            return crs.toLonLat(world.getX(), world.getY());
        } catch (GeoDataException e) {
            throw new GeoDataException(file + ": " + e.getMessage(), e);
        }
    }

    private Point2D toWorld(double column, double row) {
        return toWorld.transform(new Point2D.Double(column, row), null);
    }

    /** Number of columns. */
    public int columns() {
        return columns;
    }

    /** Number of rows. */
    public int rows() {
        return rows;
    }

    @Override
    public String toString() {
        return file + " (" + columns + " x " + rows + ", " + crs.name() + ")";
    }
}
