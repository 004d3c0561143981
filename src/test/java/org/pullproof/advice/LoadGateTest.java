package org.pullproof.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.pullproof.advice.GatePoint.State;
import org.pullproof.dyno.DayGate;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.TestKind;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.TuneUpSamples;

/** The points come from the protocol of a dyno day: common practice, no source. */
class LoadGateTest {
    private static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 13, 40);

    @Test
    void anEngineOfWhichNothingIsKnownIsNotLoaded() {
        LoadGate gate = Situations.of("own-it", "yes").now().gate();
        assertThat(gate.blocks()).isTrue();
        assertThat(gate.inTheWay()).extracting(GatePoint::key).contains("coolant", "leak", "knock", "oil-pressure");
        assertThat(gate.inTheWay()).extracting(GatePoint::key).contains("extinguisher", "brakes", "people");
    }

    @Test
    void whatWasReadNeedsNoTick() {
        LoadGate gate = sound().now().gate();
        assertThat(gate.require("coolant").state()).isEqualTo(State.READ);
        assertThat(gate.require("leak").state()).isEqualTo(State.READ);
        assertThat(gate.inTheWay()).extracting(GatePoint::about).doesNotContain("tune-up");
    }

    @Test
    void everyPointTickedOpensIt() {
        LoadGate gate = sound().gatePassed().now().gate();
        assertThat(gate.isOpen()).isTrue();
        assertThat(gate.blocks()).isFalse();
        assertThat(gate.answer().plain()).contains("open");
    }

    @Test
    void aReadingThatSpeaksAgainstItIsNotTickedAway() {
        LoadGate gate = knocking(DayGate.untouched().tick("knock", WHEN));
        assertThat(gate.require("knock").state()).isEqualTo(State.AGAINST);
        assertThatThrownBy(() -> gate.requireTickable("knock"))
                .hasMessageContaining("A knock was heard")
                .hasMessageContaining("reason");
    }

    @Test
    void withATypedReasonThePointIsPassedAndTheReasonTold() {
        LoadGate gate = knocking(DayGate.untouched().pass("knock", "it was the fuel pump's eccentric"));
        assertThat(gate.require("knock").state()).isEqualTo(State.PASSED);
        assertThat(gate.reasons()).containsExactly("no deep knock: it was the fuel pump's eccentric");
    }

    @Test
    void aReasonIsNotEmpty() {
        assertThatThrownBy(() -> DayGate.untouched().pass("brakes", " ")).hasMessageContaining("say why");
    }

    @Test
    void theStartGateIsClearedOnItsOwnSheet() {
        StepGraph graph = new TradeFiles().stepGraphs().of(TuneUpSamples.engine("inline-coil-on-plug"));
        LoadGate gate = sound().tuneUp(TuneUpSamples.upTo(graph, "d")).now().gate();
        assertThat(gate.require(LoadGate.START_GATE).state()).isEqualTo(State.AGAINST);
        assertThat(gate.require(LoadGate.START_GATE).why()).contains("off");
        assertThatThrownBy(() -> gate.requireOwn(LoadGate.START_GATE)).hasMessageContaining("Tune-up");
    }

    /** Bedding in over about 500 mi, 800 km: common practice, no source. */
    @Test
    void newRingsStandAgainstFullLoadUntilTheyAreBeddedIn() {
        LoadGate gate =
                sound().gatePassed().tuneUp(withRings(Optional.empty())).now().gate();
        assertThat(gate.require("bedded").state()).isEqualTo(State.AGAINST);
        assertThat(gate.require("bedded").why())
                .contains("No full-load pull yet: new rings or honed bores since 2026-06-14");
        assertThat(gate.blocks()).isTrue();
        assertThatThrownBy(() -> gate.requireTickable("bedded")).hasMessageContaining("pass it with a reason");
    }

    @Test
    void aTypedReasonPassesNewRingsToo() {
        DayGate passed = DayGate.untouched().pass("bedded", "run in on the stand");
        LoadGate gate =
                sound().gate(passed).tuneUp(withRings(Optional.empty())).now().gate();
        assertThat(gate.require("bedded").state()).isEqualTo(State.PASSED);
        assertThat(gate.reasons()).anySatisfy(reason -> assertThat(reason).endsWith(": run in on the stand"));
    }

    @Test
    void whatTheTuneUpKnowsToBeBeddedInIsAnswered() {
        LoadGate gate = sound().tuneUp(withRings(Optional.of("the builder says so")))
                .now()
                .gate();
        assertThat(gate.require("bedded").state()).isEqualTo(State.READ);
        assertThat(gate.require("bedded").why()).isEqualTo("new rings or honed bores: the builder says so");
    }

    @Test
    void whereNothingNewIsKnownAPersonSaysThatItIsBeddedIn() {
        assertThat(sound().now().gate().require("bedded").state()).isEqualTo(State.OPEN);
    }

    private static TuneUp withRings(Optional<String> bedded) {
        BreakIn rings = new BreakIn(BreakIn.What.RINGS, WHEN.toLocalDate(), Optional.empty(), bedded);
        return TuneUp.notBegun().withBench(TuneUp.notBegun().bench().withBreakIn(rings));
    }

    @Test
    void anAbortClosesItUntilEveryPointIsLookedAtAgain() {
        DayGate ticked = DayGate.untouched().tick("brakes", WHEN);
        DayGate aborted = ticked.abort(new DayGate.Abort(WHEN, "coolant 112 °C"));
        LoadGate gate = sound().gate(aborted).now().gate();
        assertThat(gate.require("brakes").passed()).isFalse();
        assertThat(gate.answer().plain()).contains("coolant 112 °C");
    }

    @Test
    void onAnotherDayNothingIsTickedYet() {
        LoadGate gate = sound().gatePassed().now().gate();
        assertThat(gate.on(LocalDate.of(2026, 6, 14)).isOpen()).isTrue();
        LoadGate tomorrow = gate.on(LocalDate.of(2026, 6, 15));
        assertThat(tomorrow.require("brakes").state()).isEqualTo(State.OPEN);
        assertThat(tomorrow.require("coolant").state()).isEqualTo(State.READ);
    }

    @Test
    void aPointThatIsNoneIsAnsweredWithThoseThereAre() {
        assertThatThrownBy(() -> sound().now().gate().requireTickable("paint"))
                .hasMessageContaining("paint")
                .hasMessageContaining("brakes");
    }

    @Test
    void noTwoPointsShareAKey() {
        assertThat(sound().now().gate().points()).extracting(GatePoint::key).doesNotHaveDuplicates();
    }

    private static Situations sound() {
        return Situations.of("own-it", "yes")
                .level()
                .wholeEngine()
                .sign(TestKind.OBSERVATION, OptionalInt.empty(), "no-knock");
    }

    private static LoadGate knocking(DayGate by) {
        return Situations.of("own-it", "yes")
                .sign(TestKind.OBSERVATION, OptionalInt.empty(), "knock-at-2500")
                .gate(by)
                .now()
                .gate();
    }
}
