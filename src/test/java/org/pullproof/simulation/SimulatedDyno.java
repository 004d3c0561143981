package org.pullproof.simulation;

import java.util.Locale;
import java.util.Random;

/**
 * A day on a rolling road: every pull is a little off as a whole, wanders with the speed, and the engine warms through.
 *
 * <p>The engine breathes with the density of dry air: measured power goes with pressure and the root of temperature, less a part
 * that friction takes regardless.
 */
final class SimulatedDyno {
    private static final double PULL_SCATTER_PERCENT = 0.35;
    private static final double BLOCK_SCATTER_PERCENT = 0.1;
    private static final double SOAK_PERCENT = 0.8;
    private static final double SOAK_PULLS = 5;
    private static final double DRIFT_PERCENT = -0.04;
    private static final double FINE_PERCENT = 0.25;
    private static final int FROM_RPM = 2200;
    private static final int TO_RPM = 5300;
    private static final int STEP_RPM = 20;

    private final Random random;
    private final double dayPercent;
    private double blockPercent;
    private int pulls;

    SimulatedDyno(long seed, double dayPercent) {
        this.random = new Random(seed);
        this.dayPercent = dayPercent;
    }

    /** Something was changed: straps, tyres and temperatures settle anew. */
    void newBlock() {
        blockPercent = BLOCK_SCATTER_PERCENT * random.nextGaussian();
    }

    /**
     * One pull as a file with a header.
     *
     * @param plantedPercent what the setup makes over the engine as it came, percent, at every speed
     */
    String pull(double plantedPercent, SimulatedAir air) {
        double soak = -SOAK_PERCENT * (1 - Math.exp(-pulls / SOAK_PULLS)) + DRIFT_PERCENT * pulls;
        pulls++;
        double level = plantedPercent + dayPercent + blockPercent + soak + PULL_SCATTER_PERCENT * random.nextGaussian();
        double phase = 2 * Math.PI * random.nextDouble();
        StringBuilder file = new StringBuilder("rpm,power_hp\n");
        for (int rpm = FROM_RPM; rpm <= TO_RPM; rpm += STEP_RPM) {
            double wave = 0.15 * Math.sin(2 * Math.PI * rpm / 700 + phase);
            double off = level + wave + FINE_PERCENT * random.nextGaussian();
            double horsepower = newtonMetre(rpm) * rpm * Math.PI / 30 / 745.7 * air.breathes() * Math.exp(off / 100);
            file.append(String.format(Locale.ROOT, "%d,%.2f%n", rpm, horsepower).replace("\r", ""));
        }
        return file.toString();
    }

    /** Torque at the wheels of a mild 5.6 litre V8 in reference air. */
    private static double newtonMetre(double rpm) {
        double x = (rpm - 3100) / 1000;
        return 378 * (1 - 0.05 * x * x - 0.006 * x * x * x);
    }
}
