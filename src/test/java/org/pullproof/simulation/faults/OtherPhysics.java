package org.pullproof.simulation.faults;

/**
 * A cylinder cranked or held by air, by other physics than the model's: rings leak partly like a long gap (in proportion to the
 * pressure) and less so under pressure; the gauge fills through a valve that lets a part through each step; the starter slows down
 * as pressure builds. All constants invented.
 */
final class OtherPhysics {
    private static final double GAMMA = 1.4;
    private static final double GAS = 287.05;
    private static final double STEP = 1.0;

    private final double bore;
    private final double stroke;
    private final double rod;
    private final double ratio;
    private final double closing;
    private final double air;

    /** Lengths in m, angle in degrees, air in Pa. */
    OtherPhysics(double bore, double stroke, double rod, double ratio, double closing, double air) {
        this.bore = bore;
        this.stroke = stroke;
        this.rod = rod;
        this.ratio = ratio;
        this.closing = closing;
        this.air = air;
    }

    private double volume(double degrees, double oil) {
        double r = stroke / 2;
        double t = Math.toRadians(degrees);
        double down = r * (1 - Math.cos(t)) + rod - Math.sqrt(rod * rod - r * r * Math.sin(t) * Math.sin(t));
        double area = Math.PI / 4 * bore * bore;
        return area * stroke / (ratio - 1) + area * down + 2.5e-6 - oil;
    }

    /** Gauge after the first and after the last stroke, Pa. */
    double[] crank(double ringMm2, double holeMm2, double filling, double rpm, int strokes, double oilCm3) {
        double gauge = air;
        double first = air;
        for (int stroke = 0; stroke < strokes; stroke++) {
            gauge = oneStroke(ringMm2, holeMm2, filling, rpm, oilCm3 * 1e-6, gauge);
            first = stroke == 0 ? gauge : first;
        }
        return new double[] {first - air, gauge - air};
    }

    private double oneStroke(double ring, double hole, double filling, double rpm, double oil, double before) {
        double gauge = before;
        double p = 0.97 * air * filling;
        for (double at = closing - 180; at < 45; at += STEP) {
            double now = volume(at, oil);
            double next = volume(at + STEP, oil);
            p *= Math.pow(now / next, 1.28);
            double slump = 1 - 0.18 * Math.min(1, Math.max(0, p - air) / 1.2e6);
            double seconds = STEP / (6 * rpm * slump);
            double mass = p * next / (GAS * 400);
            double out = (ringFlow(ring, p, 400) + sign(p) * nozzle(0.80 * hole * 1e-6, p, 400)) * seconds;
            p *= 1 - Math.min(out / mass, 0.9);
            if (p > gauge) {
                double even = (p * next + gauge * 7e-6) / (next + 7e-6);
                double through = 0.6 * (even - gauge);
                gauge += through;
                p -= through * 7e-6 / next;
            }
        }
        return gauge;
    }

    private double sign(double p) {
        return p >= air ? 1 : -1;
    }

    /** Half nozzle, half gap; rings are pressed on as pressure rises. */
    private double ringFlow(double mm2, double p, double kelvin) {
        double over = Math.abs(p - air);
        double pressed = 1 - 0.15 * Math.min(1, over / 1e6);
        double area = 0.80 * mm2 * 1e-6 * pressed;
        double gap = area * over / 6.0e5 * 6.0e5 / Math.sqrt(GAS * kelvin) * 0.75;
        return sign(p) * (0.5 * nozzle(area, p, kelvin) + 0.5 * gap);
    }

    private double nozzle(double area, double p, double kelvin) {
        double up = Math.max(p, air);
        double q = Math.max(Math.min(p, air) / up, 0.5283);
        double psi = Math.sqrt(2 * GAMMA / (GAMMA - 1) * (Math.pow(q, 2 / GAMMA) - Math.pow(q, (GAMMA + 1) / GAMMA)));
        return area * up * psi / Math.sqrt(GAS * kelvin);
    }

    /** Leakage in percent behind a restrictor of 1.0 mm at 90 psi. */
    double leakPercent(double ringMm2, double holeMm2) {
        double supply = 90 * 6894.757;
        double low = 0;
        double high = supply;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean more = in(middle, supply) > out(ringMm2, holeMm2, middle);
            low = more ? middle : low;
            high = more ? high : middle;
        }
        return 100 * (1 - low / supply);
    }

    private double in(double behind, double supply) {
        double up = supply + air;
        double q = Math.max((behind + air) / up, 0.5283);
        double psi = Math.sqrt(2 * GAMMA / (GAMMA - 1) * (Math.pow(q, 2 / GAMMA) - Math.pow(q, (GAMMA + 1) / GAMMA)));
        return 0.83 * Math.PI / 4 * 1e-6 * up * psi / Math.sqrt(GAS * 293);
    }

    private double out(double ring, double hole, double behind) {
        return ringFlow(ring, behind + air, 293) + nozzle(0.80 * hole * 1e-6, behind + air, 293);
    }

    /** Flow past the rings and through the hole at that leakage, g/s. */
    double[] grams(double ringMm2, double holeMm2) {
        double behind = 90 * 6894.757 * (1 - leakPercent(ringMm2, holeMm2) / 100) + air;
        return new double[] {1e3 * ringFlow(ringMm2, behind, 293), 1e3 * nozzle(0.80 * holeMm2 * 1e-6, behind, 293)};
    }
}
