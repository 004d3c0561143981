package org.pullproof.worth.decision.problem;

/**
 * What the method assumes unless the owner edits it: all judgement (worth.md 1).
 *
 * @param resaleShare ρ, share of engine money that a buyer pays back, at least 0 and below 1
 * @param saleFriction φ, share of the price that selling eats, at least 0 and below 1
 * @param overLimit chance over the budget that is still allowed, 0 to 1
 * @param baseHazard h₀, chance that a sound engine fails in 12 months, below 1
 * @param hardPullFactor by how much hard pulls raise the hazard of a tired fault, at least 1
 * @param failureCost C_fail, what a failure in use costs
 * @param overruns by how much quotes and hours run over
 * @param smallestShare smallest sum that matters, as a share of W
 * @param changeSpread spread of real changes, in 100·ln of band power, positive: what a measured gain is drawn in by
 */
public record Assumptions(
        double resaleShare,
        double saleFriction,
        double overLimit,
        double baseHazard,
        double hardPullFactor,
        Quote failureCost,
        Overruns overruns,
        double smallestShare,
        double changeSpread) {
    /** The starting values of the method; the cost of a failure is in US dollars. */
    public static final Assumptions USUAL =
            new Assumptions(0.35, 0.08, 0.1, 0.02, 2.5, new Quote(2500, 5000, 9000), Overruns.USUAL, 0.005, 1.7);

    public Assumptions {
        Check.shareBelowOne("The resale share", resaleShare);
        Check.shareBelowOne("The sale friction", saleFriction);
        Check.chance("The chance over budget that is allowed", overLimit);
        Check.shareBelowOne("The hazard of a sound engine", baseHazard);
        Check.that(hardPullFactor >= 1, "The factor of hard pulls", "at least 1", hardPullFactor);
        Check.notNegative("P10 of the cost of a failure", failureCost.p10());
        Check.notNegative("The smallest share that matters", smallestShare);
        Check.positive("The spread of real changes", changeSpread);
    }
}
