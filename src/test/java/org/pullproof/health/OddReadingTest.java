package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** What counts as odd is judgement; the figures here stand clear of every limit. */
class OddReadingTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);

    private final OddReading odd = new OddReading(new TradeConstants().health(Judgement.own()));

    private static Reading dry(int cylinder, String psi) {
        return compression(cylinder, false, psi, Optional.empty(), Conditions.notRecorded());
    }

    private static Reading compression(
            int cylinder, boolean wet, String psi, Optional<String> first, Conditions conditions) {
        return new Reading.Compression(
                OptionalInt.of(cylinder),
                wet,
                Quantity.of(psi, Unit.PSI),
                first.map(figure -> Quantity.of(figure, Unit.PSI)),
                1,
                conditions,
                NOON,
                "");
    }

    private static List<Reading> five() {
        List<Reading> five = new ArrayList<>();
        String[] psi = {"158", "162", "155", "160", "157"};
        for (int i = 0; i < psi.length; i++) {
            five.add(dry(i + 1, psi[i]));
        }
        return five;
    }

    @Test
    void aReadingFarBelowTheOthersIsToldWithThem() {
        assertThat(odd.of(dry(6, "92"), five())).contains("92 is far below the five before it (155 to 162).");
    }

    @Test
    void aMistypedReadingIsFarAboveTheOthers() {
        assertThat(odd.of(dry(6, "1580"), five()).orElseThrow()).startsWith("1580 is far above the five before it");
    }

    @ParameterizedTest
    @CsvSource({"150", "158", "170"})
    void aReadingAmongTheOthersIsNotOdd(String psi) {
        assertThat(odd.of(dry(6, psi), five())).isEmpty();
    }

    @Test
    void oneReadingBeforeItIsTooFewToCompareWith() {
        assertThat(odd.of(dry(2, "92"), five().subList(0, 1))).isEmpty();
    }

    @Test
    void aLevelReadingBelowItsOwnFirstStrokeIsOdd() {
        Reading swapped = compression(6, false, "150", Optional.of("158"), Conditions.notRecorded());

        assertThat(odd.of(swapped, five()).orElseThrow()).contains("below its own first stroke, 158");
    }

    @Test
    void aRepeatFurtherAwayThanTheGaugeExplainsIsOdd() {
        assertThat(odd.of(dry(1, "140"), five()).orElseThrow()).startsWith("140 differs from 158 before it");
    }

    @ParameterizedTest
    @CsvSource({"162, false", "163, true"})
    void aRecordedStepOfTheGaugeSaysHowFarRepeatsMayLieApart(String psi, boolean asked) {
        Conditions steps = new Conditions(
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Quantity.of("2", Unit.PSI)));

        Optional<String> sentence = odd.of(compression(1, false, psi, Optional.empty(), steps), five());

        assertThat(sentence.isPresent()).isEqualTo(asked);
    }

    @Test
    void oilThatTakesCompressionAwayIsOdd() {
        Reading wet = compression(3, true, "120", Optional.empty(), Conditions.notRecorded());

        assertThat(odd.of(wet, five()).orElseThrow()).startsWith("120 with oil is below 155 without");
    }

    @Test
    void aWetReadingIsNotHeldAgainstDryOnesOfOthers() {
        Reading wet = compression(6, true, "190", Optional.empty(), Conditions.notRecorded());

        assertThat(odd.of(wet, five())).isEmpty();
    }

    @Test
    void aDropOfNothingAmongStrongOnesIsOdd() {
        List<Reading> before = List.of(drop(1, "62"), drop(2, "58"));

        assertThat(odd.of(drop(3, "6"), before).orElseThrow()).startsWith("6 is far below the two before it");
    }

    private static Reading drop(int cylinder, String rpm) {
        return new Reading.Balance(
                OptionalInt.of(cylinder), Quantity.of(rpm, Unit.RPM), 1, Conditions.notRecorded(), NOON, "");
    }

    @ParameterizedTest
    @CsvSource({"91, true", "90, false", "14, false"})
    void aLeakAboveNinetyPercentAsksForTheStroke(String percent, boolean asked) {
        Reading leak = leak(new Reading.Leak.Percentage(Quantity.of(percent, Unit.PERCENT)), Optional.empty());

        assertThat(odd.of(leak, List.of()).filter(sentence -> sentence.contains("check the stroke first")))
                .matches(sentence -> sentence.isPresent() == asked);
    }

    @Test
    void aPressureBehindTheRestrictorIsALeakToo() {
        Reading leak =
                leak(new Reading.Leak.Behind(Quantity.of("4", Unit.PSI)), Optional.of(Quantity.of("80", Unit.PSI)));

        assertThat(odd.of(leak, List.of()).orElseThrow()).contains("95");
    }

    private static Reading leak(Reading.Leak value, Optional<Quantity> supply) {
        return new Reading.Leakdown(
                OptionalInt.of(1),
                value,
                supply,
                Optional.empty(),
                Optional.empty(),
                1,
                Conditions.notRecorded(),
                NOON,
                "");
    }
}
