package org.pullproof.simulation.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultPosterior;

/**
 * How the answer for one engine compares with the truth.
 *
 * @param found faulty cylinders that are called faulty
 * @param faulty how many there are
 * @param blamed sound cylinders called faulty
 * @param right every faulty cylinder found, no other blamed, the first fault right as far as the evidence can tell
 * @param engineCalled whether a cylinder is called faulty, or another state than ok is the likeliest
 * @param state the likeliest state
 * @param sound said p(sound)
 * @param chances said chances of faults of single cylinders, with the truth
 */
record Score(
        Kind kind,
        int found,
        int faulty,
        int blamed,
        boolean right,
        boolean engineCalled,
        EngineState state,
        double sound,
        List<Said> chances) {

    /** A said chance and whether it is true. */
    record Said(double p, boolean isTrue) {}

    static Score of(InventedEngine engine, FaultPosterior answer, Evidence evidence) {
        int found = 0;
        int faulty = 0;
        int blamed = 0;
        boolean right = true;
        List<Said> chances = new ArrayList<>();
        for (int number = 1; number <= engine.cylinders(); number++) {
            Fault truth = engine.bores.get(number - 1).fault();
            boolean called = answer.p(number, Fault.SOUND) < 0.5;
            faulty += truth != Fault.SOUND ? 1 : 0;
            found += truth != Fault.SOUND && called ? 1 : 0;
            blamed += truth == Fault.SOUND && called ? 1 : 0;
            right &= truth == Fault.SOUND
                    ? !called
                    : called
                            && told(engine.bores.get(number - 1), evidence)
                                    .contains(evidence.told(first(answer, number)));
            answer.candidates(number).forEach((candidate, p) -> {
                if (candidate.fault() != Fault.SOUND && candidate.fault() != Fault.GASKET_NEIGHBOUR) {
                    chances.add(new Said(p, candidate.fault() == truth));
                }
            });
        }
        return new Score(
                engine.kind,
                found,
                faulty,
                blamed,
                right,
                called(answer, engine),
                state(answer),
                answer.sound(),
                chances);
    }

    /** A valve that leaks at the intake and one held open there read alike until the lash is measured. */
    private static List<String> told(Bore bore, Evidence evidence) {
        boolean intake = bore.path().filter(path -> path == AirPlace.INTAKE).isPresent();
        return intake
                ? List.of(evidence.told(Fault.VALVE_HELD_OPEN), evidence.told(Fault.INTAKE_VALVE))
                : List.of(evidence.told(bore.fault()));
    }

    private static Fault first(FaultPosterior answer, int number) {
        return answer.candidates(number).entrySet().stream()
                .filter(entry -> entry.getKey().fault() != Fault.SOUND)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .map(Candidate::fault)
                .orElse(Fault.OTHER);
    }

    private static boolean called(FaultPosterior answer, InventedEngine engine) {
        boolean cylinder = false;
        for (int number = 1; number <= engine.cylinders(); number++) {
            cylinder |= answer.p(number, Fault.SOUND) < 0.5;
        }
        return cylinder || state(answer) != EngineState.OK;
    }

    private static EngineState state(FaultPosterior answer) {
        return List.of(EngineState.values()).stream()
                .max(Comparator.comparingDouble(answer::p))
                .orElseThrow();
    }

    boolean trulySound() {
        return kind == Kind.SOUND;
    }
}
