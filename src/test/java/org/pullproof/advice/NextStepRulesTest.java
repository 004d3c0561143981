package org.pullproof.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.changes.Call;
import org.pullproof.dyno.DayGate;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.AirPlace;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.Fault;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.TuneUpSamples;

/** The order of the next steps is judgement: common practice, no source. */
class NextStepRulesTest {
    private static final TradeFiles FILES = new TradeFiles();
    private static final NextStepRules RULES =
            new NextStepRules(FILES.testPrices(), new Cautions(FILES.cautions(), FILES.lastCaution()));

    @Test
    void withoutLeaveToldNothingElseIsProposed() {
        assertThat(action(Situations.nothingTold())).isEqualTo("Say what the owner permits");
    }

    @ParameterizedTest
    @CsvSource({
        "look-only, yes, 'Cold look: oil, coolant, belts, leaks, smell'",
        "start-it, yes, 'Balance, cylinder by cylinder'",
        "own-it, yes, 'Balance, cylinder by cylinder'",
        "start-it, no, Ask for leave to take the plugs out",
        "plugs-out, no, 'Plugs out, two full turns by hand, a look into each cylinder'",
        "plugs-out, dies, 'Crank for oil pressure, then compression, dry'"
    })
    void theFirstActFollowsFromLeaveAndFromWhetherItRuns(String access, String runs, String action) {
        assertThat(action(Situations.of(access, runs))).isEqualTo(action);
    }

    @ParameterizedTest
    @CsvSource({
        "start-it, 'Oil pressure, hot idle, by a mechanical gauge'",
        "plugs-out, 'Compression, dry, all plugs out'",
        "drive-it, 'Compression, dry, all plugs out'",
        "own-it, 'Compression, dry, all plugs out'"
    })
    void afterBalanceComesWhatLeavePermits(String access, String action) {
        assertThat(action(Situations.of(access, "yes").balanced())).isEqualTo(action);
    }

    @Test
    void withEveryCylinderLevelTheWholeEngineIsAsked() {
        assertThat(action(Situations.of("plugs-out", "yes").level())).startsWith("Oil pressure, hot idle");
    }

    @Test
    void theWholeEngineReadBeforePurchaseLeadsToThePrice() {
        Situations read = electronic(Situations.of("plugs-out", "yes").level().wholeEngine());
        assertThat(action(read)).isEqualTo("Say what is asked for it");
        assertThat(action(read.told(Fact.PRICE, "6400USD"))).isEqualTo("Hold the findings beside the price");
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                fault("Compression, wet, cylinder 3", all -> all.proposed(TestKind.COMPRESSION_WET, 3)),
                fault("Leak-down, cylinder 3, and listen", all -> all.proposed(TestKind.LEAKDOWN, 3)),
                fault("Valve lash", all -> all.proposed(TestKind.LASH, 3).proposed(TestKind.LEAKDOWN, 2)),
                fault("Borescope", all -> all.proposed(TestKind.BORESCOPE, 3)),
                fault("Leak-down, cylinder 1, 2, 4", all -> all.proposed(TestKind.LEAKDOWN, 1, 2, 4)),
                fault("Coolant-gas", all -> low(all, Optional.of("30 %"), Set.of(AirPlace.COOLANT))),
                fault("Swap the coil of cylinder 3", all -> all.called(Fault.IGNITION)),
                fault("Valve lash", all -> all.called(Fault.EXHAUST_VALVE).proposed(TestKind.LASH, 3)));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aFaultIsFollowedFromItsCheapestCause(String action, UnaryOperator<Situations> found) {
        assertThat(action(found.apply(Situations.of("own-it", "yes").level()))).startsWith(action);
    }

    @ParameterizedTest
    @CsvSource({
        "own-it, moved, Put another coil in cylinder 3",
        "own-it, stayed, 'Oil pressure, hot idle'",
        "drive-it, moved, 'Oil pressure, hot idle'"
    })
    void aFaultThatMovedWithTheCoilIsMendedByTheOwner(String access, String swapped, String action) {
        Situations found = Situations.of(access, "yes")
                .level()
                .called(Fault.IGNITION)
                .sign(TestKind.COIL_SWAP, OptionalInt.of(3), swapped);
        assertThat(action(found)).startsWith(action);
    }

    @Test
    void lashIsNotProposedForACarThatIsNotOnesOwn() {
        Situations found = Situations.of("plugs-out", "yes")
                .level()
                .proposed(TestKind.LASH, 3)
                .proposed(TestKind.BORESCOPE, 3);
        assertThat(action(found)).startsWith("Borescope");
    }

    @Test
    void anEngineThatIsNotSoundIsNotLoadedOnADyno() {
        Situations notSound = owned().verdict(Verdict.NOT_SOUND).tuneUp(finished());
        assertThat(action(notSound)).isEqualTo("Weigh the repair before anything else");
    }

    @Test
    void beforeARepairIsWeighedTheWholeEngineIsRead() {
        Situations notSound = Situations.of("own-it", "yes").level().verdict(Verdict.NOT_SOUND);
        assertThat(action(notSound)).startsWith("Oil pressure, hot idle");
    }

    @Test
    void lowOilPressureIsReadWithASecondGaugeFirst() {
        assertThat(action(Situations.of("own-it", "yes").oilPressure("6")))
                .isEqualTo("Oil pressure with a second gauge");
    }

    @Test
    void lowOilPressureOnTwoGaugesOpensTheFilter() {
        assertThat(action(Situations.of("own-it", "yes").oilPressure("6").oilPressure("7")))
                .isEqualTo("Cut the oil filter open");
    }

    @Test
    void aSoundEngineIsTunedBeforeItIsMeasured() {
        assertThat(RULES.choose(owned().now()).stage()).isEqualTo(Stage.TUNE_UP);
    }

    @Test
    void whatIsOffTheCarComesBeforeAnyPull() {
        StepGraph graph = graph();
        TuneUp coilsOff = TuneUpSamples.upTo(graph, "d");
        Situations pulled = owned().tuneUp(coilsOff).pulls("base", "base", "base");
        assertThat(RULES.choose(pulled.now()).stage()).isEqualTo(Stage.TUNE_UP);
    }

    @Test
    void theDynoBeginsWithThreePullsOfABaseline() {
        assertThat(action(tuned())).isEqualTo("3 more pulls on base");
        assertThat(action(tuned().pulls("base", "base"))).isEqualTo("1 more pull on base");
    }

    @Test
    void beforeTheFirstPullThereIsTheGate() {
        NextStep step = RULES.choose(owned().tuneUp(finished()).now());
        assertThat(step.action()).isEqualTo("Go through the gate before the first pull");
        assertThat(step.why()).contains("no deep knock").contains("more");
        assertThat(step.settles()).contains("3 more pulls on base");
    }

    @Test
    void anAbortSendsBackToTheGate() {
        DayGate aborted =
                DayGate.untouched().abort(new DayGate.Abort(LocalDateTime.of(2026, 6, 14, 14, 0), "belt smell"));
        assertThat(action(tuned().pulls("base").gate(aborted))).isEqualTo("Go through the gate before the first pull");
    }

    @Test
    void withABaselineOneChangeIsMade() {
        assertThat(action(based())).isEqualTo("Make one change, and only one");
    }

    @Test
    void aNewSetupGetsItsPulls() {
        assertThat(action(based().setups("base", "jets").pulls("jets"))).isEqualTo("2 pulls on jets");
    }

    @Test
    void afterItThereIsAWayBackToBase() {
        assertThat(action(based().setups("base", "jets").pulls("jets", "jets", "jets")))
                .isEqualTo("Back to base, one or two control pulls");
    }

    @ParameterizedTest
    @CsvSource({
        "LOSS, jets, Set it to base",
        "GAIN, base, Set it to jets",
        "NO_CALL, jets, 'More pulls, by turns on base and jets'",
        "GAIN, jets, Weigh what the next money buys",
        "SAME, jets, Weigh what the next money buys"
    })
    void aCallSaysWhatTheEngineKeeps(Call call, String present, String action) {
        Situations judged = based().setups("base", "jets")
                .pulls("jets", "jets", "jets", "base")
                .judged("base", "jets", call)
                .present(present);
        assertThat(action(judged)).isEqualTo(action);
    }

    static Stream<Arguments> everyLeave() {
        return Arrays.stream(Access.values())
                .flatMap(access -> Arrays.stream(Runs.values()).map(runs -> Arguments.of(access, runs)));
    }

    @ParameterizedTest
    @MethodSource("everyLeave")
    void nothingIsProposedThatTheOwnerDoesNotPermit(Access access, Runs runs) {
        List<UnaryOperator<Situations>> found = List.of(
                all -> all,
                Situations::balanced,
                Situations::level,
                all -> low(all.level(), Optional.empty(), Set.of()),
                all -> low(all.level(), Optional.of("30 %"), Set.of(AirPlace.EXHAUST)),
                all -> all.level().oilPressure("6").verdict(Verdict.NOT_SOUND),
                all -> all.level().wholeEngine().pulls("base", "base", "base"));
        assertThat(found)
                .extracting(state -> RULES.choose(state.apply(Situations.of(access.key(), runs.key()))
                                .now())
                        .needs())
                .allMatch(access::permits);
    }

    @ParameterizedTest
    @MethodSource("everyLeave")
    void everyProposalEndsWithTheManualAndTheProfessional(Access access, Runs runs) {
        NextStep step = RULES.choose(Situations.of(access.key(), runs.key()).now());
        assertThat(step.cautions()).last().asString().contains("service manual").contains("licensed professional");
    }

    private static String action(Situations found) {
        return RULES.choose(found.now()).action();
    }

    private static Situations low(Situations all, Optional<String> leak, Set<AirPlace> air) {
        return all.suspect(State.LOW, leak, air, Optional.empty());
    }

    private static Situations electronic(Situations read) {
        return read.sign(TestKind.CODES, OptionalInt.empty(), "not-ready");
    }

    private static Situations owned() {
        return Situations.of("own-it", "yes").level().wholeEngine().verdict(Verdict.SOUND);
    }

    private static Situations tuned() {
        return owned().sign(TestKind.OBSERVATION, OptionalInt.empty(), "no-knock")
                .tuneUp(finished())
                .gatePassed();
    }

    private static Situations based() {
        return tuned().pulls("base", "base", "base");
    }

    private static Arguments fault(String action, UnaryOperator<Situations> found) {
        return Arguments.of(action, found);
    }

    private static StepGraph graph() {
        return FILES.stepGraphs().of(TuneUpSamples.engine("inline-coil-on-plug"));
    }

    private static TuneUp finished() {
        TuneUp tuneUp = TuneUp.notBegun();
        for (var step : graph().steps()) {
            tuneUp = TuneUpSamples.tick(graph(), TuneUpSamples.allBack(graph(), tuneUp), step.id());
        }
        return tuneUp;
    }
}
