package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The chances after weighing the readings of one engine. All are exact sums on the model's grids, no sampling. */
public final class FaultPosterior {
    private final EngineReadings readings;
    private final Joint joint;
    private final FaultConstants constants;
    private final List<CylinderAlone> alone = new ArrayList<>();
    private final List<Map<Candidate, Double>> candidates = new ArrayList<>();
    private final Map<EngineState, Double> states = new EnumMap<>(EngineState.class);
    private final Map<Pair, Double> pairs = new LinkedHashMap<>();
    private final double sound;

    FaultPosterior(EngineReadings readings, Joint joint, FaultConstants constants) {
        this.readings = readings;
        this.joint = joint;
        this.constants = constants;
        for (CylinderReadings one : readings.cylinders()) {
            CylinderAlone cylinder = new CylinderAlone(joint, one.number());
            alone.add(cylinder);
            candidates.add(cylinder.chances());
        }
        for (EngineState state : EngineState.values()) {
            states.put(state, joint.p(state));
        }
        readings.pairs().forEach(pair -> pairs.put(pair, joint.p(pair)));
        this.sound = p(new FaultSet(EngineState.OK, Map.of(), Optional.empty()));
    }

    public EngineReadings readings() {
        return readings;
    }

    /** p(sound): no cylinder, no pair, no state of the engine is at fault. */
    public double sound() {
        return sound;
    }

    public double p(EngineState state) {
        return states.getOrDefault(state, 0.0);
    }

    /** p of the gasket between neighbours, by pair. */
    public Map<Pair, Double> pairs() {
        return pairs;
    }

    /** p of everything that may hold for one cylinder; sums 1. */
    public Map<Candidate, Double> candidates(int cylinder) {
        return candidates.get(cylinder - 1);
    }

    /** p of one fault of one cylinder alone. */
    public double p(int cylinder, Fault fault) {
        return candidates(cylinder).getOrDefault(Candidate.of(fault), 0.0);
    }

    /** p that a fault is in none of the cylinders, subtracted from 1. */
    public double anywhere(Fault fault) {
        FaultSets sets = new FaultSets(joint, readings.cylinders().size());
        return 1 - sets.nowhere(fault);
    }

    /** p that exactly these faults hold, in this state of the engine. */
    public double p(FaultSet set) {
        return new FaultSets(joint, readings.cylinders().size()).p(set);
    }

    /**
     * The likeliest sets of faults, likeliest first, until a share of all is reached; what is left is nobody's.
     *
     * @param share where to stop, 0 to 1
     * @param most sets at most
     */
    public List<FaultSet.Likely> likeliestSets(double share, int most) {
        return new FaultSets(joint, readings.cylinders().size()).likeliest(this, share, most);
    }

    /** Tests of the whole engine that speak of what no reading of a cylinder does, by test. */
    public Map<String, FaultConstants.WholeEngineTest> wholeEngineTests() {
        return constants.furtherTests().wholeEngine();
    }

    CylinderAlone alone(int cylinder) {
        return alone.get(cylinder - 1);
    }

    Joint joint() {
        return joint;
    }

    FaultConstants constants() {
        return constants;
    }
}
