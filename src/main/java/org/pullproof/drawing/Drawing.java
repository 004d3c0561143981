package org.pullproof.drawing;

import java.util.List;

/**
 * A finished picture: shapes in painting order.
 *
 * @param width in px at 100 %
 * @param height in px
 * @param title what it shows, for people who cannot see it
 * @param shapes first painted first
 */
public record Drawing(double width, double height, String title, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
    }
}
