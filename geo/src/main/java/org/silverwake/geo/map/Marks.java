// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Shapes of point symbols by well-known name, one unit in size around (0, 0), y down. The first six are those of SLD 1.0
 * (OGC 02-070, 11.3.2); the others are our own.
 */
final class Marks {
    private Marks() {}

    static Shape named(String name) {
        return switch (name) {
            case "circle" -> new Ellipse2D.Double(-0.5, -0.5, 1, 1);
            case "triangle" -> polygon(0, -0.5, 0.5, 0.42, -0.5, 0.42);
            case "star" -> star();
            case "cross" -> strokes(-0.5, 0, 0.5, 0, 0, -0.5, 0, 0.5);
            case "x" -> strokes(-0.5, -0.5, 0.5, 0.5, -0.5, 0.5, 0.5, -0.5);
            case "diamond" -> polygon(0, -0.5, 0.5, 0, 0, 0.5, -0.5, 0);
            case "arrow" -> polygon(0.6, 0, -0.4, 0.42, -0.2, 0, -0.4, -0.42);
            case "slash" -> strokes(-0.22, 0.5, 0.22, -0.5);
            case "fish" -> fish();
            case "drop" -> drop();
            case "house" -> polygon(0, -0.55, 0.5, -0.08, 0.5, 0.5, -0.5, 0.5, -0.5, -0.08);
            case "bottle" -> bottle();
            case "crossed-bottle" -> crossed();
            case "staff" ->
                polygon(-0.16, -0.5, 0.16, -0.5, 0.16, 0.3, 0.45, 0.3, 0.45, 0.5, -0.45, 0.5, -0.45, 0.3, -0.16, 0.3);
            default -> new Rectangle2D.Double(-0.45, -0.45, 0.9, 0.9);
        };
    }

    static Shape at(String name, double x, double y, double size, double angle) {
        AffineTransform to = AffineTransform.getTranslateInstance(x, y);
        to.rotate(angle);
        to.scale(size, size);
        return to.createTransformedShape(named(name));
    }

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int k = 2; k < xy.length; k += 2) {
            path.lineTo(xy[k], xy[k + 1]);
        }
        path.closePath();
        return path;
    }

    private static Shape strokes(double... xyxy) {
        Path2D path = new Path2D.Double();
        for (int k = 0; k < xyxy.length; k += 4) {
            path.moveTo(xyxy[k], xyxy[k + 1]);
            path.lineTo(xyxy[k + 2], xyxy[k + 3]);
        }
        return path;
    }

    /** A sampling bottle on a thin stem, whose foot is half the size below the bottle. */
    private static Path2D bottle() {
        Path2D path = new Path2D.Double();
        path.moveTo(-0.17, -0.5);
        path.lineTo(0.17, -0.5);
        path.lineTo(0.17, -0.34);
        path.lineTo(0.11, -0.34);
        path.lineTo(0.11, -0.16);
        path.quadTo(0.34, -0.08, 0.34, 0.1);
        path.lineTo(0.34, 0.5);
        path.lineTo(-0.34, 0.5);
        path.lineTo(-0.34, 0.1);
        path.quadTo(-0.34, -0.08, -0.11, -0.16);
        path.lineTo(-0.11, -0.34);
        path.lineTo(-0.17, -0.34);
        path.closePath();
        path.append(strokes(0, 0.5, 0, 1), false);
        return path;
    }

    private static Shape crossed() {
        Path2D path = bottle();
        path.append(strokes(-0.34, 0, 0.34, 0.5, 0.34, 0, -0.34, 0.5), false);
        return path;
    }

    private static Shape star() {
        double[] xy = new double[20];
        for (int k = 0; k < 10; k++) {
            double radius = k % 2 == 0 ? 0.5 : 0.2;
            xy[2 * k] = radius * Math.sin(Math.PI * k / 5);
            xy[2 * k + 1] = -radius * Math.cos(Math.PI * k / 5);
        }
        return polygon(xy);
    }

    private static Shape fish() {
        Path2D path = new Path2D.Double();
        path.moveTo(-0.62, 0);
        path.quadTo(-0.1, -0.62, 0.32, -0.04);
        path.lineTo(0.62, -0.3);
        path.lineTo(0.62, 0.3);
        path.lineTo(0.32, 0.04);
        path.quadTo(-0.1, 0.62, -0.62, 0);
        path.closePath();
        return path;
    }

    private static Shape drop() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -0.6);
        path.curveTo(0.15, -0.25, 0.45, -0.05, 0.45, 0.18);
        path.curveTo(0.45, 0.42, 0.25, 0.58, 0, 0.58);
        path.curveTo(-0.25, 0.58, -0.45, 0.42, -0.45, 0.18);
        path.curveTo(-0.45, -0.05, -0.15, -0.25, 0, -0.6);
        path.closePath();
        return path;
    }
}
