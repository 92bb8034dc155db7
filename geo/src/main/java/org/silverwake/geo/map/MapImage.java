// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.geo.assembly.RiverMap;

/**
 * The picture of a map alone, to be laid over others in a GIS: what lies within the frame of the printed map, pixel for pixel at its
 * resolution, without legend and margins, which would cover the land around. The frame is straight in longitude and latitude, so WGS 84
 * degrees (EPSG:4326) fit it exactly, and nothing is resampled. A strip below the frame says what is shown and that it is a screening; one above it, where single sites show,
 * that it is not for posting. Where the map lies on no ground of its own, its paper is transparent.
 */
public final class MapImage {
    private static final double POINTS_PER_INCH = 72;
    private static final double BAND = 16;
    private static final double STRIP = 26;
    private static final double LINE = 11;
    private static final double INSET = 6;
    private static final double LETTERS = 8.5;
    private static final Color INK = Color.decode(MapStyles.INK);

    private final BufferedImage image;
    private final int[] pixels;
    private final boolean opaque;
    private final double west;
    private final double north;
    private final double degreesEast;
    private final double degreesNorth;
    private final String description;

    private MapImage(BufferedImage image, boolean opaque, MapFrame frame, Rectangle2D area, String description) {
        this.image = image;
        this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        this.opaque = opaque;
        this.description = description;
        west = frame.toGround(area.getMinX(), area.getMinY()).x;
        north = frame.toGround(area.getMinX(), area.getMinY()).y;
        degreesEast = frame.degreesEastPerPoint() * area.getWidth() / image.getWidth();
        degreesNorth = frame.degreesNorthPerPoint() * area.getHeight() / image.getHeight();
    }

    /**
     * Draws the picture of a map.
     *
     * @param map the network the sheet's reaches are of
     * @param sheet what to show and say
     * @param own reaches as a user's own style shows them, if there is one
     */
    public static MapImage of(RiverMap map, MapSheet sheet, Optional<OwnLook> own) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        MapFrame frame = ConcentrationMap.frame(ConcentrationMap.page(nowhere, sheet), map, sheet);
        double perPoint = nowhere.getTransform().getScaleX() * Paper.DOTS_PER_INCH / POINTS_PER_INCH;
        nowhere.dispose();
        Rectangle2D view = frame.view();
        double band = sheet.basis().notForPosting() ? BAND : 0;
        int columns = (int) Math.round(view.getWidth() * perPoint);
        int rows = (int) Math.round((band + view.getHeight() + STRIP) * perPoint);
        // the area is that of whole pixels
        Rectangle2D area = new Rectangle2D.Double(view.getX(), view.getY() - band, columns / perPoint, rows / perPoint);
        boolean opaque = sheet.basis().ground().isDrawn();
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        Picture.smooth(g);
        g.scale(perPoint, perPoint);
        g.translate(-area.getX(), -area.getY());
        g.setColor(Color.WHITE);
        if (opaque) {
            g.fill(area);
        }
        ConcentrationMap.paintMap(g, frame, map, sheet, own);
        strips(g, area, view, sheet);
        g.dispose();
        return new MapImage(image, opaque, frame, area, description(sheet, own));
    }

    private static void strips(Graphics2D g, Rectangle2D area, Rectangle2D view, MapSheet sheet) {
        MapBasis basis = sheet.basis();
        double width = view.getWidth() - 2 * INSET;
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(area.getX(), view.getMaxY(), area.getWidth(), area.getMaxY() - view.getMaxY()));
        double y = view.getMaxY() + INSET / 2 + LETTERS;
        String what = basis.title() + ": " + sheet.subtitle();
        text(g, what, Fonts.bold(LETTERS), Color.WHITE, view.getX() + INSET, y, width);
        if (!basis.cautions().isEmpty()) {
            text(g, basis.cautions().get(0), Fonts.regular(LETTERS), Color.WHITE, view.getX() + INSET, y + LINE, width);
        }
        if (basis.notForPosting()) {
            Rectangle2D band =
                    new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), view.getMinY() - area.getY());
            g.setColor(Page.BAND_COLOR);
            g.fill(band);
            text(
                    g,
                    basis.words().notForPosting(),
                    Fonts.bold(LETTERS + 2),
                    Page.BAND_COLOR,
                    view.getX() + INSET,
                    band.getMaxY() - INSET + 1,
                    width);
        }
    }

    private static void text(Graphics2D g, String text, Font font, Color ground, double x, double y, double width) {
        g.setColor(ground.equals(Color.WHITE) ? INK : Color.WHITE);
        g.setFont(Prose.fitting(text, font, width));
        g.drawString(text, (float) x, (float) y);
    }

    /** What stands beside the map on paper, as a text: colors by their codes. */
    private static String description(MapSheet sheet, Optional<OwnLook> own) {
        MapBasis basis = sheet.basis();
        List<String> lines = new ArrayList<>();
        if (basis.notForPosting()) {
            lines.add(basis.words().notForPosting());
        }
        lines.add(basis.title());
        lines.add(sheet.subtitle());
        if (own.isPresent()) {
            lines.add(own.get().note());
        } else {
            lines.add(sheet.legendTitle() + ":");
            sheet.classes().forEach(look -> lines.add("  " + look.color() + " " + look.legend()));
        }
        if (!sheet.guidelines().isEmpty()) {
            lines.add(basis.words().comparedWith() + ":");
        }
        sheet.guidelines().forEach(line -> lines.add("  " + line.name() + ": " + line.value() + ". " + line.source()));
        lines.add(sheet.factorLine());
        if (!basis.cautions().isEmpty()) {
            lines.add(basis.words().cautions() + ":");
        }
        basis.cautions().forEach(caution -> lines.add("  " + caution));
        lines.add(basis.words().madeBy() + " " + basis.maker() + ", " + basis.date());
        return String.join("\n", lines);
    }

    /** Pixels in a row. */
    public int columns() {
        return image.getWidth();
    }

    /** Rows from north to south. */
    public int rows() {
        return image.getHeight();
    }

    /** A pixel: opacity, red, green, blue from the highest byte on; colors are not multiplied with opacity. */
    public int argb(int column, int row) {
        return pixels[row * image.getWidth() + column];
    }

    /** Whether no pixel is transparent. */
    public boolean isOpaque() {
        return opaque;
    }

    /** Longitude of the western edge of the first column [degrees], WGS 84, -180 to 180. */
    public double west() {
        return west;
    }

    /** Latitude of the northern edge of the first row [degrees], WGS 84. */
    public double north() {
        return north;
    }

    /** Width of a pixel [degrees of longitude], above 0. */
    public double degreesEastPerPixel() {
        return degreesEast;
    }

    /** Height of a pixel [degrees of latitude], above 0. */
    public double degreesNorthPerPixel() {
        return degreesNorth;
    }

    /** Resolution on paper [dots per inch]. */
    public int dotsPerInch() {
        return Paper.DOTS_PER_INCH;
    }

    /** Title, legend, what was compared with and cautions, as lines of text. */
    public String description() {
        return description;
    }
}
