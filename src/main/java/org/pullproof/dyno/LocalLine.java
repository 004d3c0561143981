package org.pullproof.dyno;

/**
 * The straight line of least squares through the samples near a speed.
 *
 * @param trace the samples
 * @param halfWidth how far samples count on either side, rpm
 */
record LocalLine(Trace trace, double halfWidth) {
    private static final int FEWEST = 3;

    /** Power at that speed, W; the speed lies in the measured range. */
    double at(double speed) {
        int from = trace.indexFrom(speed - halfWidth);
        int to = trace.indexFrom(Math.nextUp(speed + halfWidth));
        return to - from < FEWEST ? trace.wattAt(speed) : fitted(from, to, speed);
    }

    private double fitted(int from, int to, double speed) {
        double meanX = 0;
        double meanY = 0;
        for (int i = from; i < to; i++) {
            meanX += (trace.rpm(i) - speed) / (to - from);
            meanY += trace.watt(i) / (to - from);
        }
        double xx = 0;
        double xy = 0;
        for (int i = from; i < to; i++) {
            double x = trace.rpm(i) - speed - meanX;
            xx += x * x;
            xy += x * (trace.watt(i) - meanY);
        }
        return meanY - meanX * xy / xx;
    }
}
