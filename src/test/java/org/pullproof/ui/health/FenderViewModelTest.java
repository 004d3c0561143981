package org.pullproof.ui.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.OddReading;
import org.pullproof.health.Reading;
import org.pullproof.health.RunField;
import org.pullproof.health.TestKind;
import org.pullproof.session.Edit;
import org.pullproof.session.Judgement;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.health.FenderViewModel.Phase;
import org.pullproof.ui.shell.Act;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Unit;

class FenderViewModelTest {
    private final SessionViewModel session = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
    private final FenderViewModel fender = HealthPictures.fender(session);

    private void begin(TestKind test) {
        fender.open(test, OptionalInt.empty());
        fender.begin();
    }

    private static void type(FenderViewModel fender, String keys) {
        keys.chars().forEach(key -> fender.type((char) key));
    }

    /** Types figures, each followed by Enter. */
    private void enter(String... figures) {
        for (String figure : figures) {
            type(fender, figure);
            fender.enter();
        }
    }

    private List<Reading> readings() {
        return session.open().session().readings();
    }

    private List<Double> psiOf(int cylinder) {
        return readings().stream()
                .filter(reading -> reading.cylinder().equals(OptionalInt.of(cylinder)))
                .map(reading -> ((Reading.Compression) reading).gauge().in(Unit.PSI))
                .toList();
    }

    private String said() {
        return fender.screen().said().map(sentence -> sentence.plain()).orElse("");
    }

    @Test
    void enterKeepsAReadingAtOnceAndGoesOn() {
        begin(TestKind.COMPRESSION_DRY);

        enter("158");

        assertThat(psiOf(1)).containsExactly(158.0);
        assertThat(fender.screen().cylinder()).isEqualTo("2");
        assertThat(fender.screen().typed()).isEmpty();
    }

    @Test
    void theConditionsToldOnceStandWithEachReading() {
        fender.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        fender.setting().put(RunField.STROKES, "6");
        fender.setting().put(RunField.THROTTLE, "open");
        fender.setting().put(RunField.PLUGS, "all-out");
        fender.setting().put(RunField.ENGINE, "warm");
        fender.setting().put(RunField.CRANKING_VOLTS, fender.setting().read(RunField.CRANKING_VOLTS, "10.6"));
        fender.setting().put(RunField.CRANKING_RPM, fender.setting().read(RunField.CRANKING_RPM, "210"));
        fender.setting().put(RunField.GAUGE, "brass");
        fender.setting().put(RunField.GAUGE_STEP, fender.setting().read(RunField.GAUGE_STEP, "2.5"));
        fender.setting().put(RunField.STATION, fender.setting().read(RunField.STATION, "29.1"));
        fender.setting().put(RunField.WHO, "A. Friend");
        fender.begin();

        enter("158", "162");

        assertThat(readings()).extracting(Reading::conditions).hasSize(2).allSatisfy(made -> {
            assertThat(made.strokes()).hasValue(6);
            assertThat(made.throttle()).hasValue(Conditions.Throttle.OPEN);
            assertThat(made.plugs()).hasValue(Conditions.Plugs.ALL_OUT);
            assertThat(made.engine()).hasValue(Conditions.Warmth.WARM);
            assertThat(made.crankingVolts().orElseThrow().in(Unit.VOLT)).isEqualTo(10.6);
            assertThat(made.crankingRpm().orElseThrow().in(Unit.RPM)).isEqualTo(210);
            assertThat(made.gauge()).hasValue("brass");
            assertThat(made.gaugeStep().orElseThrow().in(Unit.PSI)).isEqualTo(2.5);
            assertThat(made.station().orElseThrow().in(Unit.INHG)).isEqualTo(29.1);
            assertThat(made.who()).hasValue("A. Friend");
        });
        assertThat(fender.screen().conditions())
                .isEqualTo(
                        "Grey coupé · 2 of 8 · 6 strokes · throttle open · all plugs out · engine warm · 10.6\u00a0V"
                                + " · 210\u00a0rpm · gauge brass · steps of 2.5\u00a0psi · air 29.1\u00a0inHg · read by A. Friend");
    }

    @ParameterizedTest
    @CsvSource({"STROKES, 66", "STATION, 3", "CRANKING_VOLTS, 300", "OIL, 60"})
    void aConditionThatCannotBeIsRefusedBeforeTheFirstReading(RunField field, String typed) {
        fender.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());

        assertThatThrownBy(() -> fender.setting().read(field, typed)).isInstanceOf(ReadingRules.RefusedEntry.class);
    }

    @Test
    void whatIsNotToldIsNotRecorded() {
        begin(TestKind.COMPRESSION_DRY);

        enter("158");

        assertThat(readings().get(0).conditions()).isEqualTo(Conditions.notRecorded());
        assertThat(fender.screen().conditions()).contains("not recorded");
    }

    @Test
    void aRunBrokenOffGoesOnWhereItWas() {
        fender.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        fender.setting().put(RunField.STROKES, "6");
        fender.begin();
        enter("158", "162", "155");

        FenderViewModel again = HealthPictures.fender(session);
        again.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        again.begin();

        assertThat(again.setting().text(RunField.STROKES)).isEqualTo("6");
        assertThat(again.screen().cylinder()).isEqualTo("4");
        assertThat(again.screen().rows().get(0))
                .extracting(FenderScreen.Tile::figure)
                .startsWith("158", "155");
    }

    @Test
    void tellingTheConditionsOtherwiseBeginsANewRun() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162");

        fender.conditions();
        fender.setting().put(RunField.STROKES, "8");
        fender.begin();

        assertThat(fender.screen().rows().get(0))
                .extracting(FenderScreen.Tile::figure)
                .containsOnly("");
        assertThat(readings()).hasSize(2);
    }

    @Test
    void anotherDayOnlyGaugeAndReaderAreRemembered() {
        fender.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        fender.setting().put(RunField.CRANKING_VOLTS, "10.6 V");
        fender.setting().put(RunField.GAUGE, "brass");
        fender.begin();
        enter("158");

        FenderViewModel tomorrow = new FenderViewModel(
                session,
                HealthViewModelTest.rules(),
                new TypedReadings(),
                () -> new OddReading(new TradeConstants().health(Judgement.own())),
                FenderCautions.of(SheetFixture.cautions()),
                () -> LocalDate.of(2026, 6, 15));
        tomorrow.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());

        assertThat(tomorrow.setting().text(RunField.GAUGE)).isEqualTo("brass");
        assertThat(tomorrow.setting().text(RunField.CRANKING_VOLTS)).isEmpty();
    }

    @Test
    void whatWasReadBeforeWorkIsNoPartOfTheRun() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162");
        session.act(open -> UiFixture.after(open, new Edit("Work", now -> {
            List<Reading> longer = new java.util.ArrayList<>(now.readings());
            longer.add(new Reading.Work(
                    OptionalInt.of(2),
                    "lash-set",
                    Conditions.notRecorded(),
                    now.readings().get(0).time(),
                    ""));
            return now.withReadings(longer);
        })));

        begin(TestKind.COMPRESSION_DRY);

        assertThat(fender.screen().cylinder()).isEqualTo("2");
        assertThat(fender.screen().typed()).isEmpty();
    }

    @Test
    void anOddReadingIsKeptAndAnsweredByOneSentence() {
        begin(TestKind.COMPRESSION_DRY);

        enter("158", "162", "155", "160", "157", "92");

        assertThat(psiOf(6)).containsExactly(92.0);
        assertThat(fender.screen().cylinder()).isEqualTo("6");
        assertThat(fender.screen().marked()).isTrue();
        assertThat(said()).startsWith("92 is far below the five before it (155 to 162). Press R and take it once more");
    }

    @Test
    void enterGoesOnFromAnOddReading() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162", "155", "92");

        fender.enter();

        assertThat(fender.screen().cylinder()).isEqualTo("5");
        assertThat(readings()).hasSize(4);
    }

    @Test
    void rTakesTheSameCylinderAgainBesideTheReadingThereIs() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162", "155", "92");

        fender.type('r');
        enter("94");

        assertThat(psiOf(4)).containsExactly(92.0, 94.0);
        assertThat(((Reading.Compression) readings().get(4)).round()).isEqualTo(2);
    }

    @Test
    void rKeepsAFigureThatIsTypedAndStays() {
        begin(TestKind.COMPRESSION_DRY);

        type(fender, "158r");
        enter("156");

        assertThat(psiOf(1)).containsExactly(158.0, 156.0);
        assertThat(fender.screen().cylinder()).isEqualTo("2");
    }

    @Test
    void rWithoutAReadingSaysSo() {
        begin(TestKind.COMPRESSION_DRY);

        fender.type('r');

        assertThat(said()).contains("Nothing is read at cylinder 1");
    }

    @Test
    void wMakesItAWetReadingWithItsOil() {
        fender.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        fender.setting().put(RunField.OIL, fender.setting().read(RunField.OIL, "5"));
        fender.begin();
        enter("92");
        fender.back();

        type(fender, "w");
        assertThat(fender.screen().title()).isEqualTo("Compression, wet");
        enter("140");

        assertThat(readings())
                .extracting(Reading::test)
                .containsExactly(TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET);
        assertThat(readings().get(0).conditions().oil()).isEmpty();
        assertThat(readings().get(1).conditions().oil().orElseThrow().in(Unit.ML))
                .isEqualTo(5);
        assertThat(fender.screen().rows().get(0).get(0).more()).isEqualTo("wet 140");
        assertThat(fender.screen().title()).isEqualTo("Compression, dry");
    }

    @Test
    void fTakesTheFirstStrokeBeforeTheHighest() {
        begin(TestKind.COMPRESSION_DRY);

        fender.type('f');
        assertThat(fender.screen().label()).isEqualTo("First stroke");
        enter("85", "158");

        assertThat(readings()).singleElement().satisfies(reading -> {
            Reading.Compression compression = (Reading.Compression) reading;
            assertThat(compression.first().orElseThrow().in(Unit.PSI)).isEqualTo(85);
            assertThat(compression.gauge().in(Unit.PSI)).isEqualTo(158);
        });
        assertThat(fender.screen().cylinder()).isEqualTo("2");
    }

    @Test
    void aFirstStrokeIsAddedToAReadingThatIsKept() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158");
        fender.back();

        fender.type('f');
        enter("85", "");

        assertThat(readings()).hasSize(1);
        assertThat(((Reading.Compression) readings().get(0)).first()).isPresent();
    }

    @Test
    void aMistypedReadingIsCorrectedByGoingBackAndTypingOverIt() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "612");

        fender.back();
        assertThat(fender.screen().typed()).isEqualTo("612");
        enter("162");

        assertThat(psiOf(2)).containsExactly(162.0);
        assertThat(fender.screen().cylinder()).isEqualTo("3");
    }

    @Test
    void goingBackAndOnLeavesAReadingAsItIs() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158");
        List<Reading> before = readings();

        fender.back();
        fender.enter();

        assertThat(readings()).isEqualTo(before);
    }

    @Test
    void anImpossibleReadingStaysInTheFieldWithItsSentence() {
        begin(TestKind.COMPRESSION_DRY);

        enter("9999");

        assertThat(readings()).isEmpty();
        assertThat(fender.screen().typed()).isEqualTo("9999");
        assertThat(said()).contains("0 to 5000 kPa");
    }

    @Test
    void undoTakesTheReadingBackAndReadsItsCylinderNext() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162");

        fender.undo();

        assertThat(readings()).hasSize(1);
        assertThat(fender.screen().cylinder()).isEqualTo("2");
        assertThat(fender.screen().typed()).isEmpty();
    }

    @Test
    void redoBringsItAgain() {
        begin(TestKind.COMPRESSION_DRY);
        enter("158", "162");
        fender.undo();

        fender.redo();

        assertThat(psiOf(2)).containsExactly(162.0);
    }

    @Test
    void sGoesOnWithoutAReading() {
        begin(TestKind.COMPRESSION_DRY);

        fender.type('s');

        assertThat(fender.screen().cylinder()).isEqualTo("2");
        assertThat(readings()).isEmpty();
    }

    @Test
    void afterTheLastCylinderAllAreRead() {
        begin(TestKind.COMPRESSION_DRY);

        enter("158", "162", "155", "160", "157", "159", "156", "161");

        assertThat(fender.phaseProperty().get()).isEqualTo(Phase.ALL_READ);
        assertThat(said()).startsWith("All cylinders are read");
    }

    @Test
    void balanceGoesThereAndBack() {
        begin(TestKind.BALANCE);

        enter("62", "58", "65", "60", "63", "57", "61", "64", "63");

        assertThat(fender.screen().cylinder()).isEqualTo("7");
        Reading.Balance last = (Reading.Balance) readings().get(8);
        assertThat(last.cylinder()).hasValue(8);
        assertThat(last.round()).isEqualTo(2);
    }

    @Test
    void leakDownGoesInFiringOrderAndAsksWhereTheAirIsHeard() {
        begin(TestKind.LEAKDOWN);

        enter("8", "ec");

        assertThat(fender.screen().cylinder()).isEqualTo("8");
        assertThat(leak(0).air()).hasValue(Set.of(AirPlace.EXHAUST, AirPlace.CRANKCASE));
    }

    private Reading.Leakdown leak(int index) {
        return (Reading.Leakdown) readings().get(index);
    }

    @Test
    void theLeakIsKeptBeforeAnybodyListens() {
        begin(TestKind.LEAKDOWN);

        enter("8");

        assertThat(leak(0).air()).isEmpty();
        assertThat(fender.phaseProperty().get()).isEqualTo(Phase.AIR);
    }

    @ParameterizedTest
    @CsvSource({"0, true", "ee, false", "'', false"})
    void nothingHeardIsAnotherThingThanNobodyListened(String keys, boolean listened) {
        begin(TestKind.LEAKDOWN);

        enter("8", keys);

        assertThat(leak(0).air()).isEqualTo(listened ? Optional.of(Set.of()) : Optional.empty());
    }

    @Test
    void aLeakAboveNinetyPercentAsksForTheStrokeFirst() {
        begin(TestKind.LEAKDOWN);

        enter("93");

        assertThat(said()).contains("check the stroke first");
        assertThat(fender.screen().marked()).isTrue();
    }

    @Test
    void beforeAirGoesInTheTurnAndTheTorqueAreTold() {
        begin(TestKind.LEAKDOWN);

        enter("8", "0");

        assertThat(said()).startsWith("From 1 turn the crank 90°: rotor at post 8, mark 8 at the pointer.");
        assertThat(said()).containsPattern("80.psi at 10° off turns it with \\d+.lb-ft");
    }

    @Test
    void aTesterThatShowsPressureIsReadInPressure() {
        fender.open(TestKind.LEAKDOWN, OptionalInt.of(4));
        fender.setting().showLeakAs(LeakShown.PRESSURE);
        fender.setting().put(RunField.SUPPLY, fender.setting().read(RunField.SUPPLY, "80"));
        fender.begin();

        enter("72");

        assertThat(leak(0).cylinder()).hasValue(4);
        assertThat(((Reading.Leak.Behind) leak(0).value()).pressure().in(Unit.PSI))
                .isEqualTo(72);
        assertThat(leak(0).supply().orElseThrow().in(Unit.PSI)).isEqualTo(80);
    }

    @Test
    void aPlugsLookIsChosenByItsNumber() {
        begin(TestKind.PLUG);

        enter("3");

        assertThat(((Reading.Sign) readings().get(0)).word()).hasValue("fuel-wet");
        assertThat(fender.screen().cylinder()).isEqualTo("2");
    }

    @Test
    void aReadingThatCannotBeWrittenIsToldAndNotShownAsRead() {
        HealthActs broken = new HealthActs() {
            @Override
            public Act record(Reading reading) {
                return open -> {
                    throw new java.io.IOException("The disk is full.");
                };
            }

            @Override
            public Act recordAll(List<Reading> readings) {
                throw new AssertionError("Fender mode takes one reading at a time");
            }

            @Override
            public Act correct(Reading before, Reading after) {
                return record(after);
            }

            @Override
            public Act remove(Reading reading) {
                return record(reading);
            }
        };
        FenderViewModel full = new FenderViewModel(
                session,
                HealthViewModelTest.rules(),
                broken,
                () -> new OddReading(new TradeConstants().health(Judgement.own())),
                FenderCautions.of(SheetFixture.cautions()),
                () -> LocalDate.of(2026, 6, 14));
        full.open(TestKind.COMPRESSION_DRY, OptionalInt.empty());
        full.begin();

        type(full, "158");
        full.enter();

        assertThat(full.screen().said().orElseThrow().plain()).isEqualTo("The disk is full.");
        assertThat(full.screen().cylinder()).isEqualTo("1");
        assertThat(full.screen().rows().get(0).get(0).figure()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"BALANCE, pacemaker", "COMPRESSION_DRY, solenoid", "LEAKDOWN, no tool on the crank bolt", "PLUG, 50 °C"
    })
    void theCautionsOfTheActStandBeforeTheFirstReading(TestKind test, String words) {
        fender.open(test, OptionalInt.empty());

        assertThat(fender.phaseProperty().get()).isEqualTo(Phase.BEFORE);
        assertThat(fender.cautions()).anyMatch(caution -> caution.contains(words));
    }
}
