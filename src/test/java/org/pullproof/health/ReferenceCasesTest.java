package org.pullproof.health;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.Pair;

/** Ten invented cases whose posteriors were computed apart from this program, from the method alone, in exact sums. */
class ReferenceCasesTest {
    record Chance(String of, double expected, double found, double tolerance) {
        @Override
        public String toString() {
            return of;
        }
    }

    static Stream<Chance> chances() {
        return ReferenceCase.NAMES.stream().flatMap(name -> chances(ReferenceCase.named(name)).stream());
    }

    private static List<Chance> chances(ReferenceCase one) {
        FaultPosterior posterior = one.posterior();
        List<Chance> chances = new ArrayList<>();
        String name = one.name() + ": ";
        double tolerance = one.tolerance();
        JsonNode expected = one.expected();
        chances.add(new Chance(name + "sound", expected.required("sound").doubleValue(), posterior.sound(), tolerance));
        expected.required("engineWide")
                .forEachEntry((state, p) -> chances.add(new Chance(
                        name + state,
                        p.doubleValue(),
                        posterior.p(EngineState.named(state).orElseThrow()),
                        tolerance)));
        expected.required("pairs")
                .forEachEntry((pair, p) -> chances.add(new Chance(
                        name + "pair " + pair,
                        p.doubleValue(),
                        posterior.pairs().getOrDefault(pair(pair), 0.0),
                        tolerance)));
        expected.required("cylinders")
                .forEachEntry((cylinder, faults) -> faults.forEachEntry((fault, p) -> chances.add(new Chance(
                        name + "cylinder " + cylinder + " " + fault,
                        p.doubleValue(),
                        of(posterior, Integer.parseInt(cylinder), fault),
                        tolerance))));
        return chances;
    }

    private static Pair pair(String words) {
        String[] numbers = words.split("-", -1);
        return Pair.of(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
    }

    private static double of(FaultPosterior posterior, int cylinder, String key) {
        Fault fault = Fault.named(key).orElseThrow();
        return posterior.candidates(cylinder).entrySet().stream()
                .filter(entry -> entry.getKey().fault() == fault)
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("chances")
    void agreesWithWhatWasComputedApart(Chance chance) {
        assertEquals(chance.expected(), chance.found(), chance.tolerance());
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatMayHoldForACylinderSumsToOne(String name) {
        FaultPosterior posterior = ReferenceCase.named(name).posterior();
        double sum =
                posterior.candidates(1).values().stream().mapToDouble(p -> p).sum();
        assertEquals(1, sum, 1e-12);
    }

    static List<String> names() {
        return ReferenceCase.NAMES;
    }
}
