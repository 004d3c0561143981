package org.pullproof.dyno;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pullproof.units.RpmRange;

/**
 * Samples of one pull as measured, in order of rising speed, and behind them everything that was logged while it lasted.
 */
public final class Trace {
    private final double[] rpm;
    private final double[] watt;
    private final Recording recording;
    private final int[] rising;
    private final boolean saysCorrected;

    private Trace(double[] rpm, double[] watt, Recording recording, int[] rising, boolean saysCorrected) {
        this.rpm = rpm;
        this.watt = watt;
        this.recording = recording;
        this.rising = rising;
        this.saysCorrected = saysCorrected;
    }

    /**
     * @param rpm engine speed, 1/min, strictly rising, at least two
     * @param watt power at the wheels as measured, W, one for each speed
     */
    public static Trace of(double[] rpm, double[] watt) {
        requireRising(rpm, watt);
        Recording recording = Recording.of(Map.of(Role.RPM, rpm, Role.POWER, watt));
        return new Trace(
                rpm.clone(),
                watt.clone(),
                recording,
                IntStream.range(0, rpm.length).toArray(),
                false);
    }

    private static void requireRising(double[] rpm, double[] watt) {
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
    }

    /**
     * The pull in a recording.
     *
     * @param recording of the pull from its first to its last row, with {@link Role#RPM} and {@link Role#POWER}
     * @param rising the rows whose speed rises above all before, at least two
     * @param saysCorrected whether the file says that its figures are corrected already
     */
    static Trace of(Recording recording, int[] rising, boolean saysCorrected) {
        double[] rpm = recording.picked(Role.RPM, rising);
        double[] watt = recording.picked(Role.POWER, rising);
        requireRising(rpm, watt);
        return new Trace(rpm, watt, recording, rising.clone(), saysCorrected);
    }

    /** Everything that was logged while the pull lasted, in the order of the file. */
    public Recording recording() {
        return recording;
    }

    /** Whether the file says that its figures are corrected already. */
    public boolean saysCorrected() {
        return saysCorrected;
    }

    /** What else was logged at a sample; NaN where it is blank or was not logged. */
    double at(Role role, int i) {
        return recording.at(role, rising[i]);
    }

    /** What a pull is judged by besides its power and was not logged here: of these nothing can be said. */
    public List<Role> notLogged() {
        return Role.JUDGED.stream().filter(role -> !recording.logs(role)).toList();
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

    public double firstRpm() {
        return rpm[0];
    }

    public double lastRpm() {
        return rpm[rpm.length - 1];
    }

    /** Index of the sample with the highest power; the first of several alike. */
    int peak() {
        int peak = 0;
        for (int i = 1; i < watt.length; i++) {
            peak = watt[i] > watt[peak] ? i : peak;
        }
        return peak;
    }

    /** Index of the first sample at that speed or above; {@link #size()} if there is none. */
    int indexFrom(double speed) {
        int found = Arrays.binarySearch(rpm, speed);
        return found >= 0 ? found : -found - 1;
    }

    /** Power at a speed in the measured range, on the straight line between the neighbours, W. */
    public double wattAt(double speed) {
        int above = Math.max(1, indexFrom(speed));
        double share = (speed - rpm[above - 1]) / (rpm[above] - rpm[above - 1]);
        return watt[above - 1] + share * (watt[above] - watt[above - 1]);
    }

    boolean covers(RpmRange band) {
        return firstRpm() <= band.fromRpm() && lastRpm() >= band.toRpm();
    }
}
