package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.FaultSet;
import org.pullproof.health.faults.Pair;

/** Complete accounts of an engine: their chances must add up to those of the single faults. */
class FaultSetsTest {

    @ParameterizedTest
    @CsvSource({"d1-sound-v8", "d3-exhaust-valve-v6", "d4a-neighbours-i4", "d5-rings-all-v8-high"})
    void theLikeliestSetsReachTheShareAskedForAndNeverMoreThanAll(String name) {
        double sum = ReferenceCase.named(name).posterior().likeliestSets(0.99, 200).stream()
                .mapToDouble(FaultSet.Likely::p)
                .sum();
        assertThat(sum).isBetween(0.97, 1 + 1e-9);
    }

    @Test
    void theSetOfNoFaultIsSoundness() {
        FaultPosterior posterior = ReferenceCase.named("d5-rings-all-v8-high").posterior();
        assertThat(posterior.p(new FaultSet(EngineState.OK, Map.of(), Optional.empty())))
                .isCloseTo(posterior.sound(), within(1e-12));
    }

    @Test
    void setsWithAFaultAddUpToTheFault() {
        FaultPosterior posterior = ReferenceCase.named("d3-exhaust-valve-v6").posterior();
        double sum = posterior.likeliestSets(0.9999, 400).stream()
                .filter(likely -> likely.set().faults().get(4) == Fault.EXHAUST_VALVE)
                .mapToDouble(FaultSet.Likely::p)
                .sum();
        assertThat(sum).isCloseTo(posterior.p(4, Fault.EXHAUST_VALVE), within(0.005));
    }

    @Test
    void thePairIsTheLikeliestAccountOfTwoLowNeighbours() {
        List<FaultSet.Likely> sets =
                ReferenceCase.named("d4b-neighbours-heard-i4").posterior().likeliestSets(0.99, 100);
        assertThat(sets.get(0).set().pair()).hasValue(Pair.of(2, 3));
    }
}
