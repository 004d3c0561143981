package org.pullproof.health.faults;

import java.util.Map;

/** What is believed before the readings of cylinders: shares of faults, with the odds of the engine's signs on them. */
final class Prior {
    private final FaultConstants.Priors constants;
    private final Odds odds;
    private final int cylinders;
    private final int pairs;

    Prior(FaultConstants.Priors constants, EngineReadings readings) {
        this.constants = constants;
        this.odds = readings.odds();
        this.cylinders = readings.cylinders().size();
        this.pairs = readings.pairs().size();
    }

    /** λ/N × share × ratio; sound 1 − λ/N. */
    double of(int cylinder, Fault fault) {
        double faulty = constants.faultyCylinders() / cylinders;
        return fault == Fault.SOUND ? 1 - faulty : faulty * share(fault) * odds.of(cylinder, fault);
    }

    /** λ × share/number of pairs × ratio. */
    double of(Pair pair) {
        return constants.faultyCylinders() * share(Fault.GASKET_NEIGHBOUR) / pairs * odds.of(pair);
    }

    private double share(Fault fault) {
        return constants.shares().getOrDefault(fault, 0.0) / 100;
    }

    double of(EngineState state) {
        Map<EngineState, Double> states = constants.states();
        return states.getOrDefault(state, 0.0) * odds.of(state);
    }
}
