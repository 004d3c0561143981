package org.pullproof.dyno;

/**
 * Power over a fixed grid of engine speeds: multiples of {@link #STEP} inside the measured range, nothing outside it.
 */
public final class PowerCurve {
    /** Distance of the grid, rpm. */
    public static final int STEP = 20;

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

    public int size() {
        return watt.length;
    }

    public int rpm(int i) {
        return firstRpm + i * STEP;
    }

    public double watt(int i) {
        return watt[i];
    }

    /** Torque at a point in N·m: power over angular speed. */
    public double newtonMetre(int i) {
        return watt[i] / (rpm(i) * Math.PI / 30);
    }
}
