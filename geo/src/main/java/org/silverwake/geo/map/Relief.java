// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.Ground;
import org.silverwake.geo.terrain.ElevationModel;
import org.silverwake.geo.terrain.HillShade;

/**
 * Slopes under a map, as an image: gray from paper white in full light, by nearly white on level ground, to a lightness L* of 80 in full shade (CIE 1976), so that lines keep their
 * contrast and a copy stays clean; transparent where there is no height. The image of the map drawn last is kept, as the maps of a run mostly show the same land.
 */
public final class Relief {
    /** Lightness in full shade, CIE 1976 L* [-]; chosen. */
    private static final double DARKEST = 80;

    /** Lightness of level ground, CIE 1976 L* [-], chosen: a copier still leaves it white. */
    private static final double LEVEL_GROUND = 97;

    private static final double WHITE = 100;
    /** Numbers along the longer side of the land looked at [-]: an A4 map is some 1,000 wide at 150 dots per inch, the land some 2 times as wide. */
    private static final int MOST = 2000;
    /** How far from the basin's middle the land is shaded, in halves of its longer side [-]: more than a map's view reaches. */
    private static final double REACH = 2;

    private static final double MOST_LATITUDE = 89;
    private static final double POINTS_PER_INCH = 72;
    private static final double LEAST_DOTS_PER_INCH = 150;
    private static final double MOST_DOTS_PER_INCH = 400;
    /** Places are turned into columns and rows on a lattice of so many pixels and taken as linear between them [-]. */
    private static final int LATTICE = 32;

    private static final int LEVELS = 1024;
    private static final int[] GRAYS = grays();

    private record Kept(List<Object> of, BufferedImage image) {}

    private final HillShade shade;
    private Kept kept = new Kept(List.of(), null);

    private Relief(HillShade shade) {
        this.shade = shade;
    }

    /** Of the land around a network; empty where the raster has no height there. */
    public static Optional<Relief> of(ElevationModel model, RiverMap map) {
        double first = map.reach(0).line().getCoordinate().x;
        double west = 0;
        double east = 0;
        double south = MOST_LATITUDE;
        double north = -MOST_LATITUDE;
        for (RiverMap.Reach reach : map.reaches()) {
            for (Coordinate place : reach.line().getCoordinates()) {
                double turn = Geodesy.wrap(place.x - first);
                west = Math.min(west, turn);
                east = Math.max(east, turn);
                south = Math.min(south, place.y);
                north = Math.max(north, place.y);
            }
        }
        double latitude = Math.max(-MOST_LATITUDE, Math.min(MOST_LATITUDE, (south + north) / 2));
        double width = (east - west) * Ground.metersPerDegreeEast(latitude);
        double height = (north - south) * Ground.metersPerDegreeNorth(latitude);
        double reach = REACH / 2 * Math.max(width, height);
        double across = Math.min(180, reach / Ground.metersPerDegreeEast(latitude));
        double up = reach / Ground.metersPerDegreeNorth(latitude);
        double middle = first + (west + east) / 2;
        HillShade shade = HillShade.of(
                model,
                middle - across,
                Math.max(-MOST_LATITUDE, latitude - up),
                middle + across,
                Math.min(MOST_LATITUDE, latitude + up),
                MOST);
        return shade.isEmpty() ? Optional.empty() : Optional.of(new Relief(shade));
    }

    /** What heights were multiplied by [-]. */
    double exaggeration() {
        return shade.exaggeration();
    }

    /** Draws it over the frame's view. */
    void paint(Graphics2D g, MapFrame frame) {
        Rectangle2D view = frame.view();
        double dots = Math.sqrt(Math.abs(g.getTransform().getDeterminant())) * POINTS_PER_INCH / 2;
        double perPoint = Math.max(LEAST_DOTS_PER_INCH, Math.min(MOST_DOTS_PER_INCH, dots)) / POINTS_PER_INCH;
        AffineTransform place = AffineTransform.getTranslateInstance(view.getX(), view.getY());
        place.scale(1 / perPoint, 1 / perPoint);
        Object old = g.getRenderingHint(RenderingHints.KEY_INTERPOLATION);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image(frame, perPoint), place, null);
        g.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION,
                old == null ? RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR : old);
    }

    private synchronized BufferedImage image(MapFrame frame, double perPoint) {
        Coordinate corner = frame.toGround(0, 0);
        List<Object> of = List.of(frame.view(), corner.x, corner.y, frame.pointsPerMeter(), perPoint);
        if (!kept.of.equals(of)) {
            kept = new Kept(of, made(frame, perPoint));
        }
        return kept.image;
    }

    private BufferedImage made(MapFrame frame, double perPoint) {
        Rectangle2D view = frame.view();
        int width = (int) Math.ceil(view.getWidth() * perPoint);
        int height = (int) Math.ceil(view.getHeight() * perPoint);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        for (int top = 0; top < height; top += LATTICE) {
            for (int left = 0; left < width; left += LATTICE) {
                Point2D[] corners = new Point2D[4];
                for (int k = 0; k < corners.length; k++) {
                    double x = left + k % 2 * LATTICE + 0.5;
                    double y = top + k / 2 * LATTICE + 0.5;
                    Coordinate at = frame.toGround(view.getX() + x / perPoint, view.getY() + y / perPoint);
                    corners[k] = shade.toGrid(at.x, at.y);
                }
                fill(image, left, top, corners);
            }
        }
        return image;
    }

    /** A square of pixels between four corners whose columns and rows are known. */
    private void fill(BufferedImage image, int left, int top, Point2D[] corners) {
        for (int y = top; y < Math.min(top + LATTICE, image.getHeight()); y++) {
            double down = (double) (y - top) / LATTICE;
            double fromX = corners[0].getX() + down * (corners[2].getX() - corners[0].getX());
            double fromY = corners[0].getY() + down * (corners[2].getY() - corners[0].getY());
            double toX = corners[1].getX() + down * (corners[3].getX() - corners[1].getX());
            double toY = corners[1].getY() + down * (corners[3].getY() - corners[1].getY());
            for (int x = left; x < Math.min(left + LATTICE, image.getWidth()); x++) {
                double right = (double) (x - left) / LATTICE;
                float bright = shade.at(fromX + right * (toX - fromX), fromY + right * (toY - fromY));
                image.setRGB(x, y, Float.isNaN(bright) ? 0 : GRAYS[Math.round(bright * (LEVELS - 1))]);
            }
        }
    }

    /** Gray of each shade: lightness rises evenly with it up to level ground, and evenly from there on. CIE 15:2004 and IEC 61966-2-1. */
    private static int[] grays() {
        int[] grays = new int[LEVELS];
        double level = Math.sin(Math.toRadians(HillShade.ALTITUDE));
        for (int k = 0; k < LEVELS; k++) {
            double shade = (double) k / (LEVELS - 1);
            double lightness = shade < level
                    ? DARKEST + (LEVEL_GROUND - DARKEST) * shade / level
                    : LEVEL_GROUND + (WHITE - LEVEL_GROUND) * (shade - level) / (1 - level);
            double luminance = Math.pow((lightness + 16) / 116, 3);
            double signal = 1.055 * Math.pow(luminance, 1 / 2.4) - 0.055;
            int gray = (int) Math.round(255 * signal);
            grays[k] = 0xff000000 | gray << 16 | gray << 8 | gray;
        }
        return grays;
    }
}
