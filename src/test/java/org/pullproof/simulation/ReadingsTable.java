package org.pullproof.simulation;

import java.util.Locale;
import java.util.Random;

/** Writes the readings a careful person would take of a simulated engine, as a table to be taken in. */
final class ReadingsTable {
    private static final String HEADER =
            "test,cylinder,value,first,strokes,round,supply,orifice,air,throttle,plugs,engine,crankingVolts,station,gauge,gaugeStep,note\n";
    private static final double KPA_A_PSI = 6.894757;
    private static final double GAUGE_STEP_PSI = 1;

    private final SimulatedEngine engine;
    private final Random random;
    private final StringBuilder lines = new StringBuilder(HEADER);

    ReadingsTable(SimulatedEngine engine, long seed) {
        this.engine = engine;
        this.random = new Random(seed);
    }

    /** One round of balance; a person reads the tachometer to about 2 rpm. */
    ReadingsTable balance(int round, double fallOfASoundOne) {
        for (int cylinder = 1; cylinder <= engine.cylinders().size(); cylinder++) {
            double drop = engine.drop(cylinder(cylinder), fallOfASoundOne) + 2 * random.nextGaussian();
            line(
                    "balance",
                    cylinder,
                    rounded(Math.max(0, drop), 1) + "rpm",
                    "",
                    "",
                    round,
                    "",
                    "",
                    "",
                    "",
                    "",
                    "hot",
                    "",
                    "");
        }
        return this;
    }

    /** Compression with all plugs out and the throttle open, first and last stroke. */
    ReadingsTable dry(int... cylinders) {
        for (int cylinder : cylinders) {
            compression(
                    "compression-dry",
                    cylinder,
                    cylinder(cylinder),
                    psi(engine.cranked(cylinder(cylinder), 1)) + "psi");
        }
        return this;
    }

    /** Compression once more with a spoon of oil. */
    ReadingsTable wet(int... cylinders) {
        for (int cylinder : cylinders) {
            compression("compression-wet", cylinder, cylinder(cylinder).oiled(), "");
        }
        return this;
    }

    private void compression(String test, int cylinder, SimulatedCylinder state, String first) {
        String value = psi(engine.cranked(state, 6)) + "psi";
        line(test, cylinder, value, first, "6", 1, "", "", "", "open", "all-out", "warm", "10.6V", station());
    }

    ReadingsTable leakdown(double supplyPsi, double orificeMm, int... cylinders) {
        for (int cylinder : cylinders) {
            double held = engine.held(cylinder(cylinder), supplyPsi * KPA_A_PSI, orificeMm);
            line(
                    "leakdown",
                    cylinder,
                    psi(held) + "psi",
                    "",
                    "",
                    1,
                    rounded(supplyPsi, 1) + "psi",
                    orificeMm + "mm",
                    cylinder(cylinder).air(),
                    "",
                    "",
                    "warm",
                    "",
                    station());
        }
        return this;
    }

    /** A word or figure that no physics here makes. */
    ReadingsTable sign(String test, String cylinder, String value) {
        lines.append(test)
                .append(',')
                .append(cylinder)
                .append(',')
                .append(value)
                .append(",,,,,,,,,,,,,,\n");
        return this;
    }

    private void line(
            String test,
            int cylinder,
            String value,
            String first,
            String strokes,
            int round,
            String supply,
            String orifice,
            String air,
            String throttle,
            String plugs,
            String warmth,
            String volts,
            String station) {
        String gauge = test.startsWith("compression") ? "screw-in,1psi" : ",";
        lines.append(String.join(
                        ",",
                        test,
                        Integer.toString(cylinder),
                        value,
                        first,
                        strokes,
                        Integer.toString(round),
                        supply,
                        orifice,
                        air,
                        throttle,
                        plugs,
                        warmth,
                        volts,
                        station,
                        gauge,
                        ""))
                .append('\n');
    }

    private SimulatedCylinder cylinder(int number) {
        return engine.cylinders().get(number - 1);
    }

    private String station() {
        return String.format(Locale.ROOT, "%.1fkPa", engine.ambientKpa());
    }

    /** The gauge is read to its step, with a hand's unsteadiness of 1 %. */
    private String psi(double kpa) {
        return rounded(kpa / KPA_A_PSI * (1 + 0.01 * random.nextGaussian()), GAUGE_STEP_PSI);
    }

    private static String rounded(double value, double step) {
        return String.format(Locale.ROOT, "%.0f", Math.round(value / step) * step);
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
