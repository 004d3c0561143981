package org.pullproof.health.leakdown;

import org.pullproof.units.Figures;
import org.pullproof.units.Unit;

/**
 * A leak-down tester: air at a known pressure flows through a restrictor into the cylinder and out through the leak. Restrictor
 * and leak are two nozzles in series with the same discharge coefficient, so it cancels and areas are geometric.
 *
 * <p>Two gauges: pressures here are over the surroundings unless a name says absolute.
 *
 * @param supply regulator pressure over the surroundings, Pa, greater than zero
 * @param restrictorArea area of the restrictor, m², greater than zero
 * @param surroundings absolute pressure of the air around, Pa
 */
public record LeakTester(double supply, double restrictorArea, double surroundings) {
    /** Standard atmosphere, Pa (ISO 2533): taken for the air around where it is not known. */
    public static final double STANDARD_AIR = 101_325;

    /**
     * Discharge coefficient taken for restrictor and leak alike: between a short tube and a sharp edge, judgement of this
     * project. It does not change any area or reading here, only what the flow in grams would be.
     */
    public static final double DISCHARGE_COEFFICIENT = 0.82;

    private static final double REFERENCE_SUPPLY = Unit.PSI.toSi(80);
    private static final double LARGE_BORE = Unit.IN.toSi(5.00);
    private static final double SMALL_BORE_RESTRICTOR = Unit.IN.toSi(0.040);
    private static final double LARGE_BORE_RESTRICTOR = Unit.IN.toSi(0.060);

    public LeakTester {
        require(supply > 0 && supply < 5e6, "supply is above 0 and below 5000 kPa, was " + supply / 1e3 + " kPa");
        require(
                restrictorArea > 0 && restrictorArea < 1e-3,
                "restrictor is above 0 and below 1000 mm², was " + restrictorArea * 1e6 + " mm²");
        require(surroundings > 0, "surroundings have a pressure above 0, was " + surroundings + " Pa");
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("The " + rule);
        }
    }

    /** A tester whose restrictor has that diameter in m. */
    public static LeakTester withRestrictor(double supply, double diameter, double surroundings) {
        return new LeakTester(supply, Math.PI / 4 * diameter * diameter, surroundings);
    }

    /**
     * Returns the tester that readings are restated for: 80 psi, restrictor 0.040 in below 5.00 in of bore, 0.060 in from there.
     *
     * <p>Source: FAA AC 43.13-1B change 1 (80 psi) and FAASTeam tip of November 2011 (restrictors by bore) [P].
     *
     * @param bore bore in m
     * @param surroundings absolute pressure of the air around, Pa
     */
    public static LeakTester reference(double bore, double surroundings) {
        double diameter = bore < LARGE_BORE ? SMALL_BORE_RESTRICTOR : LARGE_BORE_RESTRICTOR;
        return withRestrictor(REFERENCE_SUPPLY, diameter, surroundings);
    }

    /** The supply of the reference tester, Pa over the surroundings: 80 psi, FAA AC 43.13-1B change 1 [P]. */
    public static double referenceSupply() {
        return REFERENCE_SUPPLY;
    }

    /** Diameter of the restrictor in m. */
    public double restrictorDiameter() {
        return Math.sqrt(restrictorArea * 4 / Math.PI);
    }

    /** Returns (p₁ − p₂)/p₁ in percent, gauge pressures: what testers call leakage. Reading 0 to supply. */
    public double percent(double reading) {
        return 100 * (supply - requireReading(reading)) / supply;
    }

    /** Returns the pressure behind the restrictor for a leakage in percent, 0 to 100. */
    public double readingOf(double percent) {
        return requireReading(supply * (1 - percent / 100));
    }

    /**
     * Returns the area of the leak in m² that lets out what the restrictor lets in.
     *
     * <pre>  A_leak = A_restrictor p₁ C_f(p₂/p₁) / (p₂ C_f(p_a/p₂)),   absolute pressures</pre>
     *
     * <p>Source: mass balance of two nozzles [O] over {@link Nozzle#flowCoefficient} [P]. No leak gives 0; a reading of 0 gives
     * infinity, since nothing holds the air.
     *
     * @param reading pressure behind the restrictor, Pa over the surroundings, 0 to supply
     */
    public double leakArea(double reading) {
        double behind = requireReading(reading) + surroundings;
        return restrictorArea
                * Nozzle.fluxOfAir(supply + surroundings, behind)
                / Nozzle.fluxOfAir(behind, surroundings);
    }

    /**
     * Returns what this tester shows on a leak of that area: pressure behind the restrictor, Pa over the surroundings, found
     * by bisection to the last digits of a double.
     *
     * @param area of the leak, m², not negative
     */
    public double reading(double area) {
        double low = 0;
        double high = supply;
        while (true) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                return middle;
            }
            if (leakArea(middle) > area) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    private double requireReading(double reading) {
        require(
                reading >= 0 && reading <= supply,
                "reading behind the restrictor is 0 to the supply, " + Figures.number(supply / 1e3, 1) + " kPa, was "
                        + Figures.number(reading / 1e3, 1) + " kPa");
        return reading;
    }
}
