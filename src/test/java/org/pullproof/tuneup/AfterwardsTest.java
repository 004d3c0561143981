package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.pullproof.tuneup.TuneUpSamples.WHEN;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pullproof.files.TradeFiles;
import org.pullproof.tuneup.Afterwards.Again;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** Rechecks, bedding in and parts of the program's own steps: common practice, no source. */
class AfterwardsTest {
    private static final StepGraphs GRAPHS = new TradeFiles().stepGraphs();
    private static final Quantity START = Quantity.of("84000", Unit.MI);

    private static TuneUpFindings assess(TuneUp tuneUp, String odometer) {
        return new TuneUpAssessor(GRAPHS)
                .assess(
                        tuneUp,
                        TuneUpSamples.engine("inline-distributor"),
                        new Figures(UnitSystem.US),
                        Optional.of(Quantity.of(odometer, Unit.MI)));
    }

    private static TuneUp oilDone() {
        return TuneUp.notBegun().withDone("a", WHEN).withDone("l", WHEN);
    }

    private static TuneUp with(BreakIn breakIn) {
        return TuneUp.notBegun().withBench(Bench.EMPTY.withBreakIn(breakIn));
    }

    /** Ticked on 2026-06-14 at 84,000 miles: the next day is the 15th, 50 miles on are 84,050. */
    @Test
    void whatIsLookedAtAgainComesWithItsDayAndItsOdometer() {
        TuneUp tuneUp = oilDone().withBench(Bench.EMPTY.withOdometer(Optional.of(START)));
        Again oil = assess(tuneUp, "84010").afterwards().again().get(0);

        assertThat(oil.day()).isEqualTo(LocalDate.of(2026, 6, 15));
        assertThat(oil.odometer()).contains(Quantity.of(84050.0, Unit.MI));
        assertThat(oil.done()).isFalse();
    }

    @Test
    void whatWasLookedAtAgainIsDone() {
        TuneUp tuneUp = oilDone().withBench(Bench.EMPTY.withRechecked("Oil level; drain plug and filter dry"));
        assertThat(assess(tuneUp, "84010").afterwards().again()).allMatch(Again::done);
    }

    @Test
    void newRingsLockTheFullLoadUntilTheyAreBeddedIn() {
        BreakIn rings = new BreakIn(BreakIn.What.RINGS, WHEN.toLocalDate(), Optional.of(START), Optional.empty());

        assertThat(assess(with(rings), "84312").afterwards().fullLoadLock())
                .hasValueSatisfying(
                        lock -> assertThat(lock).contains("No full-load pull").contains("312"));
        assertThat(assess(with(rings), "84312").afterwards().breakIn()).isNotEmpty();
        assertThat(assess(with(rings), "84500").afterwards().fullLoadLock()).isEmpty();
    }

    @Test
    void theBuildersWordOpensTheLock() {
        BreakIn rings =
                new BreakIn(BreakIn.What.RINGS, WHEN.toLocalDate(), Optional.empty(), Optional.of("builder says so"));
        assertThat(assess(with(rings), "84000").afterwards().fullLoadLock()).isEmpty();
    }

    @Test
    void withoutAReasonNothingIsBeddedIn() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BreakIn(BreakIn.What.CAM, WHEN.toLocalDate(), Optional.empty(), Optional.of(" ")))
                .withMessageContaining("Say why");
    }

    /** Listed for an in-line engine: plugs 32, wires 60, cap 18, rotor 7, points 10, air filter 15 dollars; judgement. */
    @Test
    void whatIsStillToBuyIsWhatThePlannedStepsUseUp() {
        TuneUp tuneUp = TuneUp.notBegun().withWanted(java.util.Set.of("h", "j"));
        PartsToBuy all = assess(tuneUp, "84000").toBuy();
        assertThat(all.total()).contains(Money.of(142, "USD"));

        PartRecord bought = new PartRecord(
                "spark plugs",
                Fate.BOUGHT,
                Optional.of(Money.parse("28USD")),
                "",
                WHEN.toLocalDate(),
                Optional.empty(),
                Optional.empty());
        PartRecord dearer = new PartRecord(
                "plug wires",
                Fate.TO_BUY,
                Optional.of(Money.parse("85USD")),
                "with the long boots",
                WHEN.toLocalDate(),
                Optional.empty(),
                Optional.empty());
        PartsToBuy rest = assess(tuneUp.withBench(Bench.EMPTY.withPart(bought).withPart(dearer)), "84000")
                .toBuy();
        assertThat(rest.total()).contains(Money.of(135, "USD"));
        assertThat(rest.items())
                .contains(new PartsToBuy.Item("plug wires", Money.parse("85USD"), "with the long boots", false));
    }

    /** From 2021-06-14 to 2026-06-14 are 1826 days, 5.0 years; from 61,000 to 84,400 miles are 23,400. */
    @Test
    void aPartThatWasKeptSaysHowOldItIs() {
        PartRecord kept = new PartRecord(
                "plug wires",
                Fate.KEPT,
                Optional.empty(),
                "",
                LocalDate.of(2026, 6, 14),
                Optional.of(LocalDate.of(2021, 6, 14)),
                Optional.of(Quantity.of("61000", Unit.MI)));
        List<PartFinding> parts = assess(TuneUp.notBegun().withBench(Bench.EMPTY.withPart(kept)), "84400")
                .parts();
        assertThat(parts)
                .filteredOn(part -> part.part().equals("plug wires"))
                .singleElement()
                .satisfies(part -> assertThat(part.age())
                        .hasValueSatisfying(age ->
                                assertThat(age).startsWith("5.0 years old").contains("23,400")));
    }

    @Test
    void aPartThatIsBoughtHasAPrice() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartRecord(
                        "rotor",
                        Fate.BOUGHT,
                        Optional.empty(),
                        "",
                        WHEN.toLocalDate(),
                        Optional.empty(),
                        Optional.empty()))
                .withMessageContaining("0USD");
    }
}
