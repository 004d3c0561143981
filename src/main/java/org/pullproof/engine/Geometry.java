package org.pullproof.engine;

/**
 * The measures of one cylinder.
 *
 * @param boreMetre bore in m, greater than zero
 * @param strokeMetre stroke in m, greater than zero
 * @param rodMetre length of the connecting rod in m, more than half the stroke
 * @param compressionRatio volume at bottom over volume at top dead centre, greater than 1
 * @param intakeClosingDegrees degrees of crank after bottom dead centre where the intake valve closes, 0 to 120
 * @param assumed whether these are a guess of the profile, not of this very engine
 */
public record Geometry(
        double boreMetre,
        double strokeMetre,
        double rodMetre,
        double compressionRatio,
        double intakeClosingDegrees,
        boolean assumed) {
    public Geometry {
        require(boreMetre > 0.02 && boreMetre < 0.3, "bore is 20 to 300 mm, was " + boreMetre * 1e3 + " mm");
        require(strokeMetre > 0.02 && strokeMetre < 0.3, "stroke is 20 to 300 mm, was " + strokeMetre * 1e3 + " mm");
        require(
                rodMetre > strokeMetre / 2 && rodMetre < 1,
                "rod is longer than half the stroke, was " + rodMetre * 1e3 + " mm");
        require(compressionRatio > 1 && compressionRatio < 25, "compression ratio is 1 to 25, was " + compressionRatio);
        require(
                intakeClosingDegrees >= 0 && intakeClosingDegrees <= 120,
                "intake closing is 0 to 120° after bottom dead centre, was " + intakeClosingDegrees);
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException("The " + rule);
        }
    }

    /** Swept volume of one cylinder in m³. */
    public double sweptVolume() {
        return Math.PI / 4 * boreMetre * boreMetre * strokeMetre;
    }

    /**
     * Returns volume where the intake valve closes over volume at top dead centre: what is really compressed.
     *
     * <pre>  r_e = 1 + (r_c − 1) x/stroke,   x = way of the piston from top dead centre where the valve closes</pre>
     *
     * <p>Source: geometry, own derivation [O]; the closed volume only, no flow through the valve after it.
     */
    public double effectiveRatio() {
        double way = CrankGeometry.of(this).pistonFromTop(180 + intakeClosingDegrees);
        return 1 + (compressionRatio - 1) * way / strokeMetre;
    }
}
