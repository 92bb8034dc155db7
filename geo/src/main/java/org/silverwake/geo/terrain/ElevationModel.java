// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageReaderSpi;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffIIOMetadataDecoder;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffMetadata2CRSAdapter;
import org.geotools.referencing.wkt.Formattable;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.ElevationSource;
import org.silverwake.geo.crs.LayerCrs;

/**
 * Ground heights from a GeoTIFF, any coordinate system. Bilinear between cell centers; where one of the four is missing,
 * the nearest of those that are there; nothing outside the raster or where the raster has no value. Immutable.
 */
public final class ElevationModel implements ElevationSource {
    private static final int PROJECTED_KEY = 3072;
    private static final int GEOGRAPHIC_KEY = 2048;
    private static final int LARGEST_CODE = 32767;
    private static final double HALF = 0.5;

    private final Raster heights;
    private final LayerCrs crs;
    private final AffineTransform toGrid;
    private final double noValue;
    private final double toMeters;

    private ElevationModel(Raster heights, LayerCrs crs, AffineTransform toGrid, double noValue, double toMeters) {
        this.heights = heights;
        this.crs = crs;
        this.toGrid = toGrid;
        this.noValue = noValue;
        this.toMeters = toMeters;
    }

    /**
     * Opens a raster.
     *
     * @param file GeoTIFF, first band heights
     * @param toMeters factor from the raster's unit [m per unit]
     * @throws GeoDataException if it is missing, no GeoTIFF, or has no coordinate system
     */
    public static ElevationModel open(Path file, double toMeters) {
        if (!Files.isRegularFile(file)) {
            throw new GeoDataException(
                    file + ": no such file; give a GeoTIFF of ground heights as rivers.elevation.file");
        }
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            ImageReader reader = new TIFFImageReaderSpi().createReaderInstance();
            reader.setInput(in);
            GeoTiffIIOMetadataDecoder keys = new GeoTiffIIOMetadataDecoder(reader.getImageMetadata(0));
            AffineTransform toGround = (AffineTransform) GeoTiffMetadata2CRSAdapter.getRasterToModel(keys);
            ElevationModel model = new ElevationModel(
                    reader.read(0).getData(),
                    crs(file, keys),
                    toGround.createInverse(),
                    keys.hasNoData() ? keys.getNoData() : Double.NaN,
                    toMeters);
            reader.dispose();
            return model;
        } catch (IOException | NoninvertibleTransformException | IllegalArgumentException e) {
            throw new GeoDataException(
                    file + ": cannot be read as a GeoTIFF (" + e.getMessage() + "); give a georeferenced raster", e);
        }
    }

    /** Codes are read by our own door, which knows the common ones without opening a database. */
    private static LayerCrs crs(Path file, GeoTiffIIOMetadataDecoder keys) {
        Optional<String> code = code(keys, PROJECTED_KEY).or(() -> code(keys, GEOGRAPHIC_KEY));
        if (code.isPresent()) {
            return LayerCrs.of("EPSG:" + code.get());
        }
        return LayerCrs.of(described(file, keys));
    }

    /** The library throws Exception itself. */
    private static String described(Path file, GeoTiffIIOMetadataDecoder keys) {
        try {
            CoordinateReferenceSystem system = new GeoTiffMetadata2CRSAdapter(null).createCoordinateSystem(keys);
            return ((Formattable) system).toWKT(0);
        } catch (Exception e) {
            throw new GeoDataException(
                    file + ": its coordinate system is not understood (" + e.getMessage()
                            + "); write it anew with an EPSG code",
                    e);
        }
    }

    private static Optional<String> code(GeoTiffIIOMetadataDecoder keys, int key) {
        String text = keys.getGeoKey(key);
        boolean number = text != null && !text.isBlank() && Integer.parseInt(text.trim()) < LARGEST_CODE;
        return number ? Optional.of(text.trim()) : Optional.empty();
    }

    @Override
    public OptionalDouble elevation(double longitude, double latitude) {
        double[] xy = crs.fromLonLat(longitude, latitude);
        Point2D at = toGrid.transform(new Point2D.Double(xy[0], xy[1]), null);
        double column = at.getX();
        double row = at.getY();
        if (!(column >= -HALF
                && row >= -HALF
                && column <= heights.getWidth() - HALF
                && row <= heights.getHeight() - HALF)) {
            return OptionalDouble.empty();
        }
        int c = (int) Math.floor(column);
        int r = (int) Math.floor(row);
        double x = column - c;
        double y = row - r;
        OptionalDouble a = cell(c, r);
        OptionalDouble b = cell(c + 1, r);
        OptionalDouble d = cell(c, r + 1);
        OptionalDouble e = cell(c + 1, r + 1);
        if (a.isPresent() && b.isPresent() && d.isPresent() && e.isPresent()) {
            double upper = a.getAsDouble() * (1 - x) + b.getAsDouble() * x;
            double lower = d.getAsDouble() * (1 - x) + e.getAsDouble() * x;
            return OptionalDouble.of(toMeters * (upper * (1 - y) + lower * y));
        }
        OptionalDouble nearest = cell((int) Math.floor(column + HALF), (int) Math.floor(row + HALF));
        return nearest.isPresent() ? OptionalDouble.of(toMeters * nearest.getAsDouble()) : nearest;
    }

    private OptionalDouble cell(int column, int row) {
        if (column < 0 || row < 0 || column >= heights.getWidth() || row >= heights.getHeight()) {
            return OptionalDouble.empty();
        }
        double value = heights.getSampleDouble(column, row, 0);
        return Double.isNaN(value) || value == noValue ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
