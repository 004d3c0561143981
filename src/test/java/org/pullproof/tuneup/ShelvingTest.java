package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.pullproof.tuneup.TuneUpSamples.WHEN;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pullproof.files.TradeFiles;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** The off-car shelf by the program's own steps, which are common practice without a source. */
class ShelvingTest {
    private static final StepGraphs GRAPHS = new TradeFiles().stepGraphs();
    private static final StepGraph GRAPH = GRAPHS.of(TuneUpSamples.engine("inline-distributor"));
    private static final int CYLINDERS = 4;

    private final Shelving shelving = new Shelving(GRAPH);
    private final Ticking ticking = new Ticking(GRAPH);
    private final TuneUp plugsOut = plugsOut();

    private TuneUp plugsOut() {
        TuneUp tuneUp = ticking.want(TuneUp.notBegun(), List.of("plugs and wires only"));
        for (String step : List.of("a", "b", "c", "d", "e")) {
            tuneUp = ticking.tick(tuneUp, step, WHEN);
        }
        return tuneUp;
    }

    private static TuneUpFindings assess(TuneUp tuneUp) {
        return new TuneUpAssessor(GRAPHS)
                .assess(
                        tuneUp,
                        TuneUpSamples.engine("inline-distributor"),
                        new Figures(UnitSystem.US),
                        Optional.empty());
    }

    private static OffCar off(TuneUp tuneUp, String part) {
        return assess(tuneUp).offCar().stream()
                .filter(off -> off.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> blocks(TuneUp tuneUp) {
        return assess(tuneUp).startBlockedBy().stream().map(Block::what).toList();
    }

    @Test
    void aHoseThatNoStepNamesLiesOnTheShelfAndClosesTheGateUntilItIsBack() {
        TuneUp tuneUp = shelving.add(TuneUp.notBegun(), "hose of the canister", WHEN);

        assertThat(off(tuneUp, "hose of the canister").since()).isEqualTo(WHEN);
        assertThat(blocks(tuneUp)).contains("hose of the canister: still off");

        TuneUp back = ticking.back(tuneUp, "hose of the canister");
        assertThat(assess(back).offCar()).isEmpty();
        assertThat(blocks(back)).containsExactly("start gate: not ticked");
    }

    @Test
    void whatAStepTakesOffIsNotAddedByHand() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelving.add(TuneUp.notBegun(), "air cleaner", WHEN))
                .withMessageContaining("comes off with a step");
    }

    @Test
    void aPartThatIsBackOnSomeCylindersIsStillOffAndSaysWhereItIsBack() {
        TuneUp two = shelving.fit(shelving.fit(plugsOut, "plugs", 1, CYLINDERS), "plugs", 3, CYLINDERS);

        assertThat(off(two, "plugs").fitted()).contains(Set.of(1, 3));
        assertThat(blocks(two)).contains("plugs: still off, back on 1, 3 only");
        assertThat(off(shelving.unfit(two, "plugs", 3), "plugs").fitted()).contains(Set.of(1));
    }

    @Test
    void withTheLastCylinderThePartIsBackWhole() {
        TuneUp tuneUp = plugsOut;
        for (int cylinder = 1; cylinder <= CYLINDERS; cylinder++) {
            tuneUp = shelving.fit(tuneUp, "plugs", cylinder, CYLINDERS);
        }
        assertThat(assess(tuneUp).offCar()).extracting(OffCar::part).doesNotContain("plugs");
        assertThat(tuneUp.withoutBack("plugs").bench().note("plugs").fitted()).isEmpty();
    }

    @Test
    void thereIsOneBatteryLeadForAllCylinders() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelving.fit(plugsOut, "battery lead", 1, CYLINDERS))
                .withMessageContaining("put it back whole");
    }

    @Test
    void aNoteStaysWithItsPartAndAnEmptyOneForgetsIt() {
        TuneUp noted = shelving.note(plugsOut, "air cleaner", " left shelf, nut in the lid ");
        assertThat(off(noted, "air cleaner").note()).isEqualTo("left shelf, nut in the lid");
        assertThat(off(shelving.note(noted, "air cleaner", ""), "air cleaner").note())
                .isEmpty();
    }

    @Test
    void aPartThatStaysOffOnPurposeStillLiesOnTheShelfWithItsReason() {
        TuneUp left = ticking.leaveOff(plugsOut, "hot-air duct", "it is summer");
        assertThat(off(left, "hot-air duct").stays()).contains("it is summer");
        assertThat(blocks(left)).noneMatch(block -> block.startsWith("hot-air duct"));
    }
}
