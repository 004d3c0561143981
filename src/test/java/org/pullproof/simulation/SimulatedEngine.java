package org.pullproof.simulation;

import java.util.List;

/**
 * An engine that can be cranked, held at top dead centre and run on all cylinders but one.
 *
 * <p>Air is an ideal gas with γ = 1.4. While cranked it is squeezed with exponent 1.26 and leaks through the cylinder's hole by
 * the flow of a nozzle; the gauge behind its check valve fills by the same share every stroke.
 *
 * @param litre displacement of one cylinder
 * @param squeeze volume where the intake valve closes over volume at top dead centre
 * @param ambientKpa pressure of the air
 * @param cylinders from 1 on
 */
record SimulatedEngine(double litre, double squeeze, double ambientKpa, List<SimulatedCylinder> cylinders) {
    private static final double GAMMA = 1.4;
    private static final double GAS_CONSTANT = 287;
    private static final double INTAKE_KELVIN = 320;
    private static final double SQUEEZE_EXPONENT = 1.26;
    private static final double STROKE_SECONDS = 0.1;
    private static final double GAUGE_FILLS = 0.7;
    private static final int STEPS = 2000;

    /** Gauge pressure after some strokes of cranking, kPa over ambient. */
    double cranked(SimulatedCylinder cylinder, int strokes) {
        return (peak(cylinder) - ambientKpa) * (1 - Math.pow(1 - GAUGE_FILLS, strokes));
    }

    /** Highest pressure of one stroke: squeezed step by step from the full to the smallest volume, leaking all the while. */
    private double peak(SimulatedCylinder cylinder) {
        double volume = litre * 1e-3 * squeeze / (squeeze + 1);
        double smallest = volume / squeeze;
        double mass = ambientKpa * 1e3 * volume / (GAS_CONSTANT * INTAKE_KELVIN);
        double left = mass;
        double highest = ambientKpa * 1e3;
        for (int i = 1; i <= STEPS; i++) {
            double turn = (1 + Math.cos(Math.PI * i / STEPS)) / 2;
            double ratio = volume / (smallest + (volume - smallest) * turn);
            double pascal = ambientKpa * 1e3 * Math.pow(ratio * left / mass, SQUEEZE_EXPONENT);
            double kelvin = INTAKE_KELVIN * Math.pow(ratio, SQUEEZE_EXPONENT - 1);
            left -= nozzle(cylinder.leakMm2(), pascal, ambientKpa * 1e3, kelvin) * STROKE_SECONDS / STEPS;
            highest = Math.max(highest, pascal);
        }
        return highest / 1e3;
    }

    /** Pressure between a tester's restrictor and the cylinder, kPa over ambient: what flows in flows out. */
    double held(SimulatedCylinder cylinder, double supplyKpa, double orificeMm) {
        double orificeMm2 = Math.PI / 4 * orificeMm * orificeMm;
        double supply = (supplyKpa + ambientKpa) * 1e3;
        double low = ambientKpa * 1e3;
        double high = supply;
        for (int i = 0; i < 60; i++) {
            double between = (low + high) / 2;
            boolean fills = nozzle(orificeMm2, supply, between, INTAKE_KELVIN)
                    > nozzle(cylinder.leakMm2(), between, ambientKpa * 1e3, INTAKE_KELVIN);
            low = fills ? between : low;
            high = fills ? high : between;
        }
        return low / 1e3 - ambientKpa;
    }

    /** How much the engine slows when this cylinder is shut off, rpm: its share of the work of all. */
    double drop(SimulatedCylinder cylinder, double fallOfASoundOne) {
        return fallOfASoundOne * work(cylinder) / work(SimulatedCylinder.sound(0));
    }

    /** At idle a stroke takes less time than while cranking, so about half as much air is lost. */
    private double work(SimulatedCylinder cylinder) {
        SimulatedCylinder atIdle = new SimulatedCylinder(cylinder.leakMm2() / 2, 0, 1, cylinder.air());
        return cylinder.fires() * Math.pow(peak(atIdle), 2);
    }

    /** Mass flow of air through a nozzle, kg/s. */
    private static double nozzle(double mm2, double fromPascal, double toPascal, double kelvin) {
        double choked = Math.pow(2 / (GAMMA + 1), GAMMA / (GAMMA - 1));
        double ratio = Math.max(choked, Math.min(1, toPascal / fromPascal));
        double speed = Math.sqrt(
                2 * GAMMA / (GAMMA - 1) * (Math.pow(ratio, 2 / GAMMA) - Math.pow(ratio, (GAMMA + 1) / GAMMA)));
        return mm2 * 1e-6 * fromPascal / Math.sqrt(GAS_CONSTANT * kelvin) * speed;
    }
}
