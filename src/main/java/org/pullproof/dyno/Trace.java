package org.pullproof.dyno;

/**
 * Samples of one pull as measured, in order of rising speed.
 */
public final class Trace {
    private final double[] rpm;
    private final double[] watt;

    private Trace(double[] rpm, double[] watt) {
        this.rpm = rpm;
        this.watt = watt;
    }

    /**
     * @param rpm engine speed, 1/min, strictly rising, at least two
     * @param watt power at the wheels as measured, W, one for each speed
     */
    public static Trace of(double[] rpm, double[] watt) {
        if (rpm.length < 2 || rpm.length != watt.length) {
            throw new IllegalArgumentException("A trace has at least two samples and one power a speed, was "
                    + rpm.length + " speeds and " + watt.length + " powers");
        }
        for (int i = 1; i < rpm.length; i++) {
            if (!(rpm[i] > rpm[i - 1])) {
                throw new IllegalArgumentException(
                        "The speeds of a trace rise, but " + rpm[i] + " follows " + rpm[i - 1]);
            }
        }
        return new Trace(rpm.clone(), watt.clone());
    }

    public int size() {
        return rpm.length;
    }

    public double rpm(int i) {
        return rpm[i];
    }

    public double watt(int i) {
        return watt[i];
    }
}
