package org.pullproof.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Call;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Settling;
import org.pullproof.engine.Ignition;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.tuneup.TuneUpSamples;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.units.UnitSystem;
import org.pullproof.worth.DefaultOption.Expected;
import org.pullproof.worth.Option.Gain;
import org.pullproof.worth.WorthFindings.CostPerHp;
import org.pullproof.worth.WorthFindings.Row;

class WorthAssessorTest {
    /** One mechanical horsepower: 550 ft·lbf/s, 0.745 699 87 kW (NIST SP 811, appendix B.8). */
    private static final double HP = 0.74569987;

    private static final double PRESENT_KW = 200 * HP;
    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    /** By hand: $90 for 3 hp, 90 % interval 2 to 4.5 hp, is $30 per hp, from 90/4.5 = $20 to 90/2 = $45. */
    @Test
    void aChangeThatMadePowerHasAPriceForEachHorsepower() {
        CostPerHp cost = paid(90, 2, 3, 4.5, Call.GAIN);
        assertThat(cost.words()).isEqualTo("$30 per hp ($20 to $45)");
        assertThat(cost.low().orElseThrow()).isCloseTo(20, within(1e-4));
        assertThat(cost.high().orElseThrow()).isCloseTo(45, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "-0.5, 1, 2.5, NO_CALL, not established: the interval holds 0",
        "0, 1, 2, NO_CALL, not established: the interval holds 0",
        "-4, -3, -2, LOSS, not established: it lost power",
        "2, 3, 4, SPOILED, not established: the pulls were not made under comparable conditions"
    })
    void elsewhereThePriceIsNotEstablished(double low, double likely, double high, Call call, String words) {
        CostPerHp cost = paid(90, low, likely, high, call);
        assertThat(cost.words()).isEqualTo(words);
        assertThat(cost.established()).isFalse();
    }

    @Test
    void aGainThatCostNothingIsSaidToCostNothing() {
        assertThat(paid(0, 2, 3, 4, Call.GAIN).words()).isEqualTo("it cost nothing");
    }

    @Test
    void aChangeWithoutACostHasNoPrice() {
        assertThat(assess(MoneyBook.empty(), car(Map.of()), judged(Optional.empty(), 2, 3, 4, Call.GAIN))
                        .done())
                .isEmpty();
    }

    /** By hand: 2 % (1 to 4 %) of 200 hp is 4 hp (2 to 8); 60, 80, 120 dollars give 60/8 = 7.5, 80/4 = 20, 120/2 = 60. */
    @Test
    void anOptionsExpectedPriceComesFromItsGainAndThePresentPower() {
        Row row = row(option("duct", 60, 80, 120, Optional.of(new Gain(1, 2, 4))));
        assertThat(row.gainHp().orElseThrow().likely()).isCloseTo(4, within(1e-4));
        assertThat(row.costPerHp().low().orElseThrow()).isCloseTo(7.5, within(1e-4));
        assertThat(row.costPerHp().likely().orElseThrow()).isCloseTo(20, within(1e-4));
        assertThat(row.costPerHp().high().orElseThrow()).isCloseTo(60, within(1e-4));
    }

    @Test
    void anOptionWithoutAGainHasNoPrice() {
        assertThat(row(option("polish", 60, 80, 120, Optional.empty()))
                        .costPerHp()
                        .words())
                .isEqualTo("not established: no gain is expected of it");
    }

    @Test
    void withoutPresentPowerNoPriceIsEstablished() {
        MoneyBook book = new MoneyBook(List.of(), List.of(option("duct", 60, 80, 120, Optional.of(new Gain(1, 2, 4)))));
        WorthFindings findings = assessor()
                .assess(
                        book,
                        car(Map.of()),
                        List.of(),
                        health(),
                        ledger(List.of()),
                        OptionalDouble.empty(),
                        TuneUpSamples.engine("any"),
                        US);
        assertThat(findings.options().get(0).costPerHp().words()).isEqualTo("not established: power unknown");
    }

    @Test
    void whatIsSpentIsSetApartAndTheBudgetLosesOnlyWhatTheSessionSpent() {
        MoneyBook book = new MoneyBook(List.of(new Spending("plugs", Money.parse("38USD"), DAY)), List.of());
        Car car = car(Map.of(Fact.SPENT, "1400USD", Fact.BUDGET, "500USD"));
        WorthFindings findings = assess(book, car, judged(Optional.of(Money.parse("62USD")), 2, 3, 4, Call.GAIN));
        assertThat(findings.spent().value()).isEqualTo(1400 + 38 + 62);
        assertThat(findings.budgetLeft().orElseThrow().value()).isEqualTo(500 - 38 - 62);
        assertThat(findings.answer().plain()).contains("The $1,500 already spent does not count.");
    }

    @Test
    void anOptionDearerThanTheBudgetLeftEvenAtItsLowCostIsMarked() {
        MoneyBook book = new MoneyBook(
                List.of(),
                List.of(
                        option("cheap", 100, 600, 900, Optional.empty()),
                        option("dear", 501, 600, 900, Optional.empty())));
        WorthFindings findings = assess(book, car(Map.of(Fact.BUDGET, "500USD")));
        assertThat(findings.options())
                .extracting(row -> row.option().name() + " " + row.overBudget())
                .contains("cheap false", "dear true");
    }

    @Test
    void withNoPriceShownTheAnswerSaysSo() {
        assertThat(assess(MoneyBook.empty(), car(Map.of())).answer().plain())
                .startsWith("No adjustment has shown its price yet")
                .contains("chances are not weighed");
    }

    @Test
    void theAnswerNamesWhatWasPaidForAtTheBestPriceBesideWhatWasFree() {
        WorthFindings findings = assess(
                MoneyBook.empty(),
                car(Map.of()),
                judged(Optional.of(Money.parse("0USD")), 4, 5, 6, Call.GAIN),
                judged(Optional.of(Money.parse("90USD")), 2, 3, 4.5, Call.GAIN));
        assertThat(findings.answer().plain())
                .startsWith("The power paid for at the best price so far is base → jets: $30 per hp ($20 to $45).");
    }

    @Test
    void anEnteredOptionTakesThePlaceOfTheDefaultOfItsName() {
        MoneyBook book = new MoneyBook(List.of(), List.of(option("Coils", 1, 2, 3, Optional.empty())));
        assertThat(assess(book, car(Map.of())).options())
                .extracting(row -> row.option().name() + " " + row.option().judgement())
                .containsExactly("Coils false");
    }

    @Test
    void aDefaultThatIsPaidAlreadyIsNotOfferedAgain() {
        MoneyBook book = new MoneyBook(List.of(new Spending("coils", Money.parse("80USD"), DAY)), List.of());
        assertThat(assess(book, car(Map.of())).options()).isEmpty();
    }

    @Test
    void defaultsOfOtherEnginesAreNotOffered() {
        assertThat(assess(MoneyBook.empty(), car(Map.of())).options())
                .extracting(row -> row.option().name())
                .containsExactly("coils");
    }

    @Test
    void moneyOfAnotherCurrencyIsNamedAndNotCounted() {
        MoneyBook book = new MoneyBook(List.of(new Spending("tyres", Money.parse("350USD"), DAY)), List.of());
        WorthFindings findings = assess(book, car(Map.of(Fact.BUDGET, "500EUR")));
        assertThat(findings.spent().value()).isZero();
        assertThat(findings.options()).isEmpty();
        assertThat(findings.remarks()).anyMatch(remark -> remark.startsWith("tyres: $350 is not counted"));
    }

    /** Standard normal table: 5 % lie beyond 1.645 standard deviations, so 2 ± 1.645 · 1 is 0.355 to 3.645. */
    @Test
    void aNormalGainSpansItsNinetyPercent() {
        Gain gain = new Expected.Normal(2, 1).gain(4);
        assertThat(gain.lowPercent()).isCloseTo(0.355, within(5e-4));
        assertThat(gain.highPercent()).isCloseTo(3.645, within(5e-4));
    }

    /** Trade of the job: one cylinder of four gives back 16 %, one of eight 8 %; common practice, no source. */
    @ParameterizedTest
    @CsvSource({"4, 16", "8, 8"})
    void aCylinderGivenBackIsWorthLessOfAnEngineWithMore(int cylinders, double percent) {
        assertThat(new Expected.CylinderBack(16).gain(cylinders).likelyPercent())
                .isEqualTo(percent);
    }

    private static final Figures US = new Figures(UnitSystem.US);

    private static WorthAssessor assessor() {
        return new WorthAssessor(List.of(own("coils", Ignition.COIL_ON_PLUG), own("rotor", Ignition.DISTRIBUTOR)));
    }

    private static DefaultOption own(String name, Ignition ignition) {
        return new DefaultOption(
                name,
                Money.of(40, "USD"),
                Money.of(75, "USD"),
                Money.of(180, "USD"),
                1,
                new Expected.Normal(1, 1),
                Set.of(ignition),
                Set.of(),
                false);
    }

    private static Row row(Option option) {
        return assess(new MoneyBook(List.of(), List.of(option)), car(Map.of())).options().stream()
                .filter(row -> row.option().equals(option))
                .findFirst()
                .orElseThrow();
    }

    private static Option option(String name, double low, double likely, double high, Optional<Gain> gain) {
        return new Option(name, Money.of(low, "USD"), Money.of(likely, "USD"), Money.of(high, "USD"), 2, gain, false);
    }

    private static CostPerHp paid(double dollars, double lowHp, double hp, double highHp, Call call) {
        return assess(
                        MoneyBook.empty(),
                        car(Map.of()),
                        judged(Optional.of(Money.of(dollars, "USD")), lowHp, hp, highHp, call))
                .done()
                .get(0)
                .costPerHp();
    }

    private static JudgedChange judged(Optional<Money> cost, double lowHp, double hp, double highHp, Call call) {
        Change change = new Change("base", "jets", "jets", LocalDateTime.of(2026, 6, 14, 13, 40), cost, Set.of());
        return new JudgedChange(
                "base → jets",
                "base",
                "jets",
                true,
                Optional.of(change),
                100,
                100 + hp * HP,
                hp,
                lowHp,
                highHp,
                hp * HP,
                lowHp * HP,
                highHp * HP,
                call,
                true,
                Settling.DONE,
                Optional.empty(),
                "");
    }

    private static Car car(Map<Fact, String> facts) {
        return new Car("invented", facts);
    }

    private static WorthFindings assess(MoneyBook book, Car car, JudgedChange... judged) {
        List<Spending> costs = List.of(judged).stream()
                .flatMap(each -> each.change().flatMap(Change::cost).stream())
                .map(cost -> new Spending("change", cost, DAY))
                .toList();
        return assessor()
                .assess(
                        book,
                        car,
                        costs,
                        health(),
                        ledger(List.of(judged)),
                        OptionalDouble.of(PRESENT_KW),
                        TuneUpSamples.engine("any"),
                        US);
    }

    private static HealthFindings health() {
        return new HealthFindings(
                Verdict.SOUND,
                new Sentence(""),
                List.of(),
                List.of(),
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(),
                FaultFindings.none());
    }

    private static ChangeLedger ledger(List<JudgedChange> judged) {
        return new ChangeLedger(
                new Sentence(""),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                false,
                judged,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
    }
}
