// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Small pictures that maps for phones hold, as PNG: the legend, and symbols of points as maps show them. */
public final class PhonePictures {
    private static final int ICON = 64;
    private static final double ICON_POINTS = 20;
    private static final double SYMBOL = 15;
    private static final double WIDTH = 290;
    private static final double MARGIN = 8;
    private static final double PER_POINT = 2.5;
    private static final double LETTERS = 12.5;

    private PhonePictures() {}

    /**
     * A legend on white. Lines are unbroken, as phones draw them.
     *
     * @param title what the classes are classes of
     * @param bands what must be seen first
     * @param classes in the order of the legend
     * @param caution a sentence below it
     */
    public static byte[] legend(String title, List<String> bands, List<LineClass> classes, String caution) {
        Consumer<Panel> content = panel -> {
            bands.forEach(band -> panel.strong(band, LETTERS));
            panel.heading(title);
            classes.forEach(look -> panel.line(
                    List.of(Symbols.line(look.color(), look.width(), List.of(), "round")), look.legend(), LETTERS));
            panel.paragraph(caution, LETTERS);
        };
        double height = Panel.height(WIDTH - 2 * MARGIN, content);
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(WIDTH * PER_POINT),
                (int) Math.ceil((height + 2 * MARGIN) * PER_POINT),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        Picture.smooth(g);
        g.scale(PER_POINT, PER_POINT);
        Panel.draw(g, new Rectangle2D.Double(MARGIN, MARGIN, WIDTH - 2 * MARGIN, height + 1), content);
        g.dispose();
        return png(image);
    }

    /** The symbol of a kind of point, in the middle of a transparent square. */
    public static byte[] icon(MapPoint.Kind kind) {
        BufferedImage image = new BufferedImage(ICON, ICON, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        Picture.smooth(g);
        g.scale(ICON / ICON_POINTS, ICON / ICON_POINTS);
        Rectangle2D room = new Rectangle2D.Double(0, 0, ICON_POINTS, ICON_POINTS);
        new SymbolPainter(g, new LabelInk(room))
                .paint(
                        Symbols.point(MapStyles.mark(kind), SYMBOL),
                        null,
                        new GeometryFactory().createPoint(new Coordinate(ICON_POINTS / 2, ICON_POINTS / 2)));
        g.dispose();
        return png(image);
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
