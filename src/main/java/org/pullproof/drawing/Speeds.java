package org.pullproof.drawing;

/**
 * The engine speeds a chart shows.
 *
 * @param fromRpm lower end, rpm
 * @param toRpm upper end, rpm, above the lower
 */
public record Speeds(int fromRpm, int toRpm) {
    /** Nothing narrower is shown: a curve has a point every 10 rpm. */
    public static final int NARROWEST = 200;

    public Speeds {
        if (toRpm <= fromRpm) {
            throw new IllegalArgumentException(
                    "A chart shows speeds from low to high, was " + fromRpm + " to " + toRpm);
        }
    }

    /** Those of a gesture from one speed to another, whichever way it went; widened if it is narrower than can be shown. */
    public static Speeds between(int one, int other) {
        int from = Math.min(one, other);
        return new Speeds(from, Math.max(Math.max(one, other), from + NARROWEST));
    }

    public int width() {
        return toRpm - fromRpm;
    }

    public boolean holds(int rpm) {
        return rpm >= fromRpm && rpm <= toRpm;
    }

    /**
     * Wider or narrower about a speed that keeps its place, not beyond {@code whole}.
     *
     * @param factor of the width, above 0
     */
    public Speeds scaled(int about, double factor, Speeds whole) {
        double share = (about - fromRpm) / (double) width();
        int wide = (int) Math.round(Math.min(whole.width(), Math.max(NARROWEST, width() * factor)));
        int from = (int) Math.round(about - share * wide);
        int inside = Math.max(whole.fromRpm, Math.min(from, whole.toRpm - wide));
        return new Speeds(inside, inside + wide);
    }
}
