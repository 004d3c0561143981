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
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.testing.Moneys;
import org.pullproof.tuneup.TuneUpSamples;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.WorthFindings.CostPerHp;

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

    @Test
    void whatIsSpentIsSetApart() {
        MoneyBook book = new MoneyBook(List.of(new Spending("plugs", Money.parse("38USD"), DAY)), List.of());
        Car car = car(Map.of(Fact.SPENT, "1400USD", Fact.BUDGET, "500USD"));
        WorthFindings findings = assess(book, car, judged(Optional.of(Money.parse("62USD")), 2, 3, 4, Call.GAIN));
        assertThat(findings.spent().value()).isEqualTo(1400 + 38 + 62);
    }

    @Test
    void moneyOfAnotherCurrencyIsNamedAndNotCounted() {
        MoneyBook book = new MoneyBook(List.of(new Spending("tyres", Money.parse("350USD"), DAY)), List.of());
        WorthFindings findings = assess(book, car(Map.of(Fact.BUDGET, "500EUR")));
        assertThat(findings.spent().value()).isZero();
        assertThat(findings.remarks()).anyMatch(remark -> remark.startsWith("tyres: $350 is not counted"));
        assertThat(findings.remarks()).anyMatch(remark -> remark.contains("counted as so many EUR each"));
    }

    @Test
    void withNothingReadAndNothingToldItIsTooEarly() {
        assertThat(assess(MoneyBook.empty(), car(Map.of()), OptionalDouble.empty())
                        .tooEarly())
                .isTrue();
        assertThat(assess(MoneyBook.empty(), car(Map.of(Fact.PRICE, "900USD")), OptionalDouble.empty())
                        .tooEarly())
                .isFalse();
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
        return assess(book, car, OptionalDouble.of(PRESENT_KW), judged);
    }

    private static WorthFindings assess(MoneyBook book, Car car, OptionalDouble presentKw, JudgedChange... judged) {
        List<Spending> costs = List.of(judged).stream()
                .flatMap(each -> each.change().flatMap(Change::cost).stream())
                .map(cost -> new Spending("change", cost, DAY))
                .toList();
        return Moneys.assessor()
                .assess(
                        book,
                        car,
                        costs,
                        health(),
                        Set.of(),
                        ledger(List.of(judged)),
                        List.of(),
                        presentKw,
                        TuneUpSamples.engine("any"));
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
