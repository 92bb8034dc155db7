// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Writes pictures as PNG with their resolution, so that they print at the size they were drawn for. */
final class PngFile {
    private static final double INCH_METERS = 0.0254;
    private static final String FORMAT = "javax_imageio_png_1.0";

    private PngFile() {}

    static void write(BufferedImage image, int dotsPerInch, Path file) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        IIOMetadata metadata = writer.getDefaultImageMetadata(
                ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
        String perMeter = Long.toString(Math.round(dotsPerInch / INCH_METERS));
        IIOMetadataNode density = new IIOMetadataNode("pHYs");
        density.setAttribute("pixelsPerUnitXAxis", perMeter);
        density.setAttribute("pixelsPerUnitYAxis", perMeter);
        density.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode(FORMAT);
        root.appendChild(density);
        metadata.mergeTree(FORMAT, root);
        Files.deleteIfExists(file);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
    }
}
