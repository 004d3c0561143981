package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.car.Access;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.TestOutcomes;
import org.pullproof.health.nexttest.Circumstances;
import org.pullproof.health.nexttest.NextTest;
import org.pullproof.health.nexttest.TestAdvisor;
import org.pullproof.health.nexttest.TestCost;

/** Bits and dollars of tests on the reference cases; figures computed apart from this program, printed to 0.01 bit and $ 1. */
class NextTestValueTest {
    private static TestAdvisor advisor(FaultPosterior posterior, Optional<Access> access, double dollars) {
        return new TestAdvisor(
                posterior,
                ReferenceCase.CONSTANTS,
                (test, cylinders, all, again) -> new TestCost(30, dollars),
                new Circumstances(access, Set.of(), 0));
    }

    private static List<NextTest> proposals(String name, boolean settled) {
        return advisor(ReferenceCase.named(name).posterior(), Optional.empty(), 0)
                .proposals(settled);
    }

    @ParameterizedTest
    @CsvSource({
        "d3-exhaust-valve-v6, 4, LASH, 0.42, 138",
        "d3-exhaust-valve-v6, 4, BORESCOPE, 0.13, 77",
        "d6-intake-valve-i4, 2, LASH, 0.44, 114",
        "d2-dead-cylinder-i4, 3, COIL_SWAP, 0.23, 0",
        "d4a-neighbours-i4, 2, LEAKDOWN, 0.25, 15",
        "d4a-neighbours-i4, 2, COMPRESSION_WET, 0.05, 5",
        "d4a-neighbours-i4, 3, LEAKDOWN, 0.25, 17",
        "d4a-neighbours-i4, 1, BALANCE, 0.27, 61",
        "d4a-neighbours-i4, 4, BALANCE, 0.27, 61",
        "d4a-neighbours-i4, 1, PLUG, 0.08, 34"
    })
    void aTestIsWorthWhatWasComputedApart(String name, int cylinder, TestKind test, double bits, double dollars) {
        FaultPosterior posterior = ReferenceCase.named(name).posterior();
        assertThat(new TestOutcomes(posterior).of(cylinder, test).orElseThrow().information())
                .isCloseTo(bits, within(0.006));
        assertThat(advisor(posterior, Optional.empty(), 0).value(cylinder, test).orElseThrow())
                .isCloseTo(dollars, within(0.6));
    }

    @Test
    void ofAValveThatLeaksTheLashComesFirst() {
        assertThat(proposals("d3-exhaust-valve-v6", true)).singleElement().satisfies(test -> {
            assertThat(test.test()).isEqualTo(TestKind.LASH);
            assertThat(test.cylinders()).containsExactly(4);
            assertThat(test.reason()).isEqualTo(NextTest.Reason.WORTH_ITS_COST);
        });
    }

    @Test
    void aPairThatNobodyListenedToIsListenedToOnceAndTheOthersAreBalanced() {
        List<NextTest> tests = proposals("d4a-neighbours-i4", true);
        assertThat(tests).extracting(NextTest::test).containsExactly(TestKind.LEAKDOWN, TestKind.BALANCE);
        assertThat(tests.get(0).reason()).isEqualTo(NextTest.Reason.TELLS_MOST);
        assertThat(tests.get(1).cylinders()).containsExactly(1, 4);
    }

    @ParameterizedTest
    @CsvSource({"d1-sound-v8", "d2-dead-cylinder-i4", "d9-rings-one-i6"})
    void whereEverythingIsSettledNoTestIsProposed(String name) {
        assertThat(proposals(name, true)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LEAKDOWN", "COMPRESSION_WET", "PLUG"})
    void onASoundEngineNoTestIsWorthTwoCentsACylinder(TestKind test) {
        TestAdvisor advisor = advisor(ReferenceCase.named("d1-sound-v8").posterior(), Optional.empty(), 0);
        assertThat(advisor.value(1, test).orElseThrow()).isLessThan(0.02);
    }

    @Test
    void whatTheOwnerDoesNotPermitIsNotProposed() {
        FaultPosterior posterior = ReferenceCase.named("d3-exhaust-valve-v6").posterior();
        assertThat(advisor(posterior, Optional.of(Access.PLUGS_OUT), 0).proposals(true))
                .extracting(NextTest::test)
                .doesNotContain(TestKind.LASH);
    }

    @Test
    void aTestThatCostsMoreThanItIsWorthIsNotCalledWorthIt() {
        FaultPosterior posterior = ReferenceCase.named("d3-exhaust-valve-v6").posterior();
        assertThat(advisor(posterior, Optional.empty(), 120).proposals(true)).isEmpty();
    }

    @Test
    void aTestThatWasDoneIsNotWeighedAgain() {
        FaultPosterior posterior = ReferenceCase.named("d3-exhaust-valve-v6").posterior();
        assertThat(advisor(posterior, Optional.empty(), 0).value(4, TestKind.LEAKDOWN))
                .isEmpty();
    }

    @Test
    void withNothingReadTheTestThatSettlesMostAMinuteIsProposed() {
        FaultFindings faults = Sheets.assess(Sheets.I4, List.of()).faults();
        assertThat(faults.nextTests()).isNotEmpty();
        assertThat(faults.read()).isFalse();
    }
}
