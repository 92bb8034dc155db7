// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A drawing on paper, written as PNG, SVG or PDF by the file's ending. Painters draw in points of the page, 1/72 inch, from its top left
 * corner. In SVG and PDF texts stay texts that can be searched, with the letters they need from {@link Fonts} in the file, so that
 * they look the same everywhere. Same drawing, same bytes.
 */
public final class Picture {
    private static final double POINTS_PER_INCH = 72;

    /** Set where letters must stay letters; elsewhere their outlines may be filled. */
    private static final RenderingHints.Key LETTERS = new RenderingHints.Key(0) {
        @Override
        public boolean isCompatibleValue(Object value) {
            return value instanceof Boolean;
        }
    };

    /** Set on pages of pixels: the image they are. */
    private static final RenderingHints.Key PIXELS = new RenderingHints.Key(1) {
        @Override
        public boolean isCompatibleValue(Object value) {
            return value instanceof BufferedImage;
        }
    };

    private Picture() {}

    /**
     * Draws a page into a file.
     *
     * @param file ending in .png, .svg or .pdf; replaced if there, moved into place when complete
     * @param width of the page [points], positive
     * @param height of the page [points], positive
     * @param dotsPerInch resolution of a PNG; SVG and PDF have none
     * @param painter draws on the page
     * @throws IllegalArgumentException if the file has another ending
     */
    public static void write(Path file, double width, double height, int dotsPerInch, Consumer<Graphics2D> painter) {
        MapFormat format = MapFormat.of(ending(file))
                .orElseThrow(
                        () -> new IllegalArgumentException(file + ": give a name that ends in .png, .svg or .pdf"));
        switch (format) {
            case PNG -> PngFile.write(file, image(width, height, dotsPerInch, painter), dotsPerInch);
            case SVG -> SvgFile.write(file, width, height, prepared(painter));
            case PDF -> PdfFile.write(file, width, height, List.of(prepared(painter)));
        }
    }

    /** Draws a sheet at the usual resolution, as {@link #write(Path, double, double, int, Consumer)} does. */
    public static void write(Path file, Paper paper, Consumer<Graphics2D> painter) {
        write(file, paper.width(), paper.height(), Paper.DOTS_PER_INCH, painter);
    }

    /**
     * Draws several pages of one size into one PDF file.
     *
     * @param file replaced if there
     * @param paper its size
     * @param painters one per page, at least one
     */
    public static void writePages(Path file, Paper paper, List<Consumer<Graphics2D>> painters) {
        PdfFile.write(
                file,
                paper.width(),
                paper.height(),
                painters.stream().map(Picture::prepared).toList());
    }

    /** The drawing as pixels on white, without a file. */
    static BufferedImage image(double width, double height, int dotsPerInch, Consumer<Graphics2D> painter) {
        int columns = (int) Math.round(width * dotsPerInch / POINTS_PER_INCH);
        int rows = (int) Math.round(height * dotsPerInch / POINTS_PER_INCH);
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, columns, rows);
        smooth(g);
        g.setRenderingHint(PIXELS, image);
        g.scale(columns / width, columns / width);
        painter.accept(g);
        g.dispose();
        return image;
    }

    /** Whether texts must be drawn as strings, so that they can be searched. */
    static boolean keepsLetters(Graphics2D g) {
        return Boolean.TRUE.equals(g.getRenderingHint(LETTERS));
    }

    /** The image that a page of pixels is, of TYPE_INT_RGB. */
    static Optional<BufferedImage> pixels(Graphics2D g) {
        return Optional.ofNullable((BufferedImage) g.getRenderingHint(PIXELS));
    }

    private static Consumer<Graphics2D> prepared(Consumer<Graphics2D> painter) {
        return g -> {
            smooth(g);
            g.setRenderingHint(LETTERS, true);
            painter.accept(g);
        };
    }

    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1);
    }
}
