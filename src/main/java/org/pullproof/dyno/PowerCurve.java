package org.pullproof.dyno;

/**
 * Power over a fixed grid of engine speeds: multiples of {@link #STEP} inside the measured range, nothing outside it. It is
 * for looking at; band power is taken from the samples themselves, see {@link BandPower}.
 */
public final class PowerCurve {
    /** Distance of the grid, rpm. */
    public static final int STEP = 20;

    /** Width that a curve is smoothed over, rpm. */
    public static final int SMOOTHING = 120;

    private final int firstRpm;
    private final double[] watt;

    private PowerCurve(int firstRpm, double[] watt) {
        this.firstRpm = firstRpm;
        this.watt = watt;
    }

    /**
     * @param firstRpm speed of the first point, a multiple of {@link #STEP}
     * @param watt power at each point, W
     */
    public static PowerCurve of(int firstRpm, double[] watt) {
        if (firstRpm % STEP != 0) {
            throw new IllegalArgumentException("A curve begins at a multiple of " + STEP + " rpm, was " + firstRpm);
        }
        return new PowerCurve(firstRpm, watt.clone());
    }

    /**
     * Smooths the samples onto the grid: at each point the straight line of least squares through the samples within half of
     * {@link #SMOOTHING} on either side, at the ends through those of one side. Where fewer than three samples lie that near, the
     * straight line between the two neighbours. A straight line stays what it is (O).
     *
     * @return a curve without points if no multiple of {@link #STEP} lies in the measured range
     */
    public static PowerCurve from(Trace trace) {
        int first = (int) Math.ceil(trace.rpm(0) / STEP) * STEP;
        int last = (int) Math.floor(trace.rpm(trace.size() - 1) / STEP) * STEP;
        int points = Math.max(0, (last - first) / STEP + 1);
        double[] watt = new double[points];
        for (int i = 0; i < points; i++) {
            watt[i] = new LocalLine(trace, SMOOTHING / 2.0).at(first + i * STEP);
        }
        return new PowerCurve(first, watt);
    }

    public int size() {
        return watt.length;
    }

    public int rpm(int i) {
        return firstRpm + i * STEP;
    }

    public double watt(int i) {
        return watt[i];
    }

    /**
     * Power at a multiple of {@link #STEP} inside the curve, W.
     *
     * @throws IllegalArgumentException if the curve has no point there
     */
    public double wattAt(int rpm) {
        int i = (rpm - firstRpm) / STEP;
        if (i < 0 || i >= watt.length || rpm(i) != rpm) {
            throw new IllegalArgumentException("The curve has no point at " + rpm + " rpm");
        }
        return watt[i];
    }

    /** Torque at a point in N·m: power over angular speed. */
    public double newtonMetre(int i) {
        return watt[i] / (rpm(i) * Math.PI / 30);
    }
}
