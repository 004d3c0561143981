package org.pullproof.health.leakdown;

/**
 * Flow of a gas through a nozzle, isentropic up to the throat, choked where the pressure falls below the critical ratio.
 * Pressures are absolute, in Pa.
 */
public final class Nozzle {
    /** Ratio of specific heats of air. */
    static final double AIR_GAMMA = 1.4;

    /** Gas constant of dry air, J/(kg·K). */
    static final double AIR_GAS_CONSTANT = 287.05;

    private Nozzle() {}

    /**
     * Returns the ratio of downstream to upstream pressure below which the throat is choked.
     *
     * <pre>  r* = (2/(γ+1))^(γ/(γ−1))</pre>
     *
     * <p>Source: NACA Report 1135; 0.5283 for γ = 1.4 [P].
     *
     * @param gamma ratio of specific heats, greater than 1
     */
    public static double criticalRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * Returns the flow coefficient of a nozzle, without unit.
     *
     * <pre>  C_f = √( 2γ (r^((γ−1)/γ) − 1) / ((γ−1)(β⁴ − r^(−2/γ))) )</pre>
     *
     * <p>Source: 40 CFR 1065.640, flow coefficient C_f [P]; its examples 0.6846 (β = 0, γ = 1.399, choked) and 0.274
     * (r = 0.97668, β = 0.8, γ = 1.399) stand in {@code NozzleTest}. Exact for an ideal gas.
     *
     * @param ratio downstream over upstream pressure, 0 to 1; below the critical ratio the throat is choked
     * @param beta throat over inlet diameter, 0 for an opening much smaller than what stands before it
     * @param gamma ratio of specific heats, greater than 1
     */
    public static double flowCoefficient(double ratio, double beta, double gamma) {
        if (!(ratio >= 0 && ratio <= 1)) {
            throw new IllegalArgumentException("A pressure ratio is 0 to 1, was " + ratio);
        }
        double r = Math.max(ratio, criticalRatio(gamma));
        double drive = 2 * gamma * (Math.pow(r, (gamma - 1) / gamma) - 1);
        return Math.sqrt(drive / ((gamma - 1) * (Math.pow(beta, 4) - Math.pow(r, -2 / gamma))));
    }

    /**
     * Returns the mass flow of air in kg/s through an opening that is small beside what stands before it.
     *
     * <pre>  ṁ = C_d A p₁ C_f(p₂/p₁) / √(R T₁)</pre>
     *
     * <p>Source: 40 CFR 1065.640 and NACA Report 1135 [P], γ = 1.4, R = 287.05 J/(kg·K).
     *
     * @param effectiveArea discharge coefficient times area, m²
     * @param upstream absolute pressure before it, Pa, greater than zero
     * @param downstream absolute pressure behind it, Pa, not above upstream
     * @param kelvin temperature before it, K
     */
    public static double airFlow(double effectiveArea, double upstream, double downstream, double kelvin) {
        return effectiveArea * fluxOfAir(upstream, downstream) / Math.sqrt(AIR_GAS_CONSTANT * kelvin);
    }

    /** Flow of air per effective area, times √(R T): what two openings in series have to share. */
    static double fluxOfAir(double upstream, double downstream) {
        return upstream * flowCoefficient(downstream / upstream, 0, AIR_GAMMA);
    }
}
