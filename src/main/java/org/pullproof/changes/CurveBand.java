package org.pullproof.changes;

import java.util.List;

/**
 * A difference over engine speed with a band that holds the whole true curve 90 times in 100.
 *
 * @param points in order of speed
 * @param regions where the band excludes 0
 */
public record CurveBand(List<Point> points, List<Region> regions) {
    public CurveBand {
        points = List.copyOf(points);
        regions = List.copyOf(regions);
    }

    /**
     * @param rpm engine speed
     * @param percent the difference
     * @param low lower edge of the band, percent
     * @param high upper edge, percent
     */
    public record Point(int rpm, double percent, double low, double high) {}

    /**
     * Speeds over which power was gained or lost for certain at this level; the true region reaches further.
     *
     * @param sign 1 for a gain, −1 for a loss
     */
    public record Region(int fromRpm, int toRpm, int sign) {}
}
