package org.pullproof.health.faults;

/** Weighs the readings of one engine. Immutable. */
public final class FaultModel {
    private final FaultConstants constants;
    private final Hypotheses hypotheses;

    public FaultModel(FaultConstants constants) {
        this.constants = constants;
        this.hypotheses = new Hypotheses(constants);
    }

    public FaultConstants constants() {
        return constants;
    }

    /** The chances of everything, given these readings. */
    public FaultPosterior weigh(EngineReadings readings) {
        Likelihoods likelihoods = new Likelihoods(readings, hypotheses, constants);
        return new FaultPosterior(
                readings, new Joint(readings, likelihoods, new Prior(constants.priors(), readings)), constants);
    }
}
