package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.health.Sheets.V8;
import static org.pullproof.health.Sheets.taken;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.health.Conditions.Throttle;
import org.pullproof.health.Conditions.Warmth;
import org.pullproof.health.ReadingSheet.Problem;
import org.pullproof.health.ReadingSheet.Row;
import org.pullproof.units.Unit;

class ReadingSheetTest {
    private static Reading one(String header, String row) {
        return Sheets.readings(V8, header, row).get(0);
    }

    private static Problem problem(String header, String row) {
        assertThat(taken(V8, header, row).problems()).hasSize(1);
        return taken(V8, header, row).problems().get(0);
    }

    @Test
    void columnsStandInAnyOrder() {
        Reading reading = one("value,Cylinder,test,gaugestep", "158 psi,3,compression-dry,2.5psi");
        assertThat(reading.cylinder()).hasValue(3);
        assertThat(reading.conditions().gaugeStep()).isPresent();
    }

    @Test
    void aHeaderThatIsNoHeaderIsQuotedInShort() {
        assertThat(problem("x".repeat(5000) + ",test", "1,balance").message())
                .startsWith("There is no column \"" + "x".repeat(40) + "…\"");
    }

    @Test
    void aCompressionReadingKeepsHowItWasMade() {
        Reading.Compression reading = (Reading.Compression) one(
                "test,cylinder,value,first,strokes,throttle,plugs,engine,crankingVolts",
                "compression-dry,3,158psi,84psi,6,open,all-out,warm,10.6V");
        assertThat(reading.gauge().in(Unit.PSI)).isEqualTo(158);
        assertThat(reading.first().orElseThrow().in(Unit.PSI)).isEqualTo(84);
        assertThat(reading.conditions().strokes()).hasValue(6);
        assertThat(reading.conditions().throttle()).hasValue(Throttle.OPEN);
        assertThat(reading.conditions().engine()).hasValue(Warmth.WARM);
    }

    @Test
    void aWetReadingKeepsItsOilAndWhoReadIt() {
        Conditions how = one("test,cylinder,value,oil,who", "compression-wet,3,165psi,5mL,A. Friend")
                .conditions();
        assertThat(how.oil().orElseThrow().in(Unit.ML)).isEqualTo(5);
        assertThat(how.who()).hasValue("A. Friend");
    }

    @Test
    void oilBelongsToAWetReading() {
        assertThat(problem("test,cylinder,value,oil", "compression-dry,3,158psi,5mL")
                        .column())
                .isEqualTo("oil");
    }

    @Test
    void moreOilThanACylinderTakesIsRefused() {
        assertThat(problem("test,cylinder,value,oil", "compression-wet,3,158psi,60mL")
                        .message())
                .contains("0.5 to 50 mL");
    }

    @Test
    void anEmptyCellIsNotRecorded() {
        assertThat(one("test,cylinder,value,strokes,throttle", "compression-dry,3,158psi,,")
                        .conditions())
                .isEqualTo(Conditions.notRecorded());
    }

    @Test
    void aShortRowHasEmptyCellsAtItsEnd() {
        assertThat(one("test,cylinder,value,note", "compression-dry,3,158psi").note())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"14%, Percentage", "70psi, Behind", "high, Zone", "'14,5 %', Percentage"})
    void aLeakIsAPercentageAPressureOrAZone(String value, String kind) {
        List<Row> rows =
                List.of(new Row(1, List.of("test", "cylinder", "value")), new Row(2, List.of("leakdown", "3", value)));
        Reading.Leakdown leak = (Reading.Leakdown)
                new ReadingSheet(V8, Sheets.TIME).read(rows).readings().get(0);
        assertThat(leak.value().getClass().getSimpleName()).isEqualTo(kind);
    }

    @Test
    void airIsSeveralPlacesWithSemicolons() {
        Reading.Leakdown leak = (Reading.Leakdown) one("test,cylinder,value,air", "leakdown,3,40%,exhaust; crankcase");
        assertThat(leak.air()).isEqualTo(Optional.of(Set.of(AirPlace.EXHAUST, AirPlace.CRANKCASE)));
    }

    @Test
    void noAirHeardIsNotTheSameAsNobodyListened() {
        assertThat(((Reading.Leakdown) one("test,cylinder,value,air", "leakdown,3,4%,none")).air())
                .hasValue(Set.of());
        assertThat(((Reading.Leakdown) one("test,cylinder,value,air", "leakdown,3,4%,")).air())
                .isEmpty();
    }

    @Test
    void aDecimalCommaIsUnderstood() {
        List<Row> rows = List.of(new Row(1, List.of("test", "value")), new Row(2, List.of("vacuum", "18,5inHg")));
        Reading.Sign vacuum = (Reading.Sign)
                new ReadingSheet(V8, Sheets.TIME).read(rows).readings().get(0);
        assertThat(vacuum.figure().orElseThrow().in(Unit.INHG)).isEqualTo(18.5);
    }

    @Test
    void workMayConcernTheWholeEngine() {
        assertThat(one("test,cylinder,value", "work,,other").cylinder()).isEqualTo(OptionalInt.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "plug, 3, fuel-wet",
        "lash, 3, in-spec",
        "lash, 3, 0.30mm",
        "coil-swap, 3, moved",
        "coolant-gas, '', negative",
        "oil-pressure, '', 24psi",
        "vacuum, '', sinks-at-2500",
        "starter-current, 3, 92%",
        "running-compression, 3, 60psi",
        "borescope, 3, burnt-edge",
        "filter-cut, '', bright-flakes",
        "codes, '', P0303",
        "codes, '', not-ready",
        "observation, '', no-knock"
    })
    void everyFurtherTestIsTakenIn(String test, String cylinder, String value) {
        assertThat(one("test,cylinder,value", test + "," + cylinder + "," + value)
                        .test()
                        .key())
                .isEqualTo(test);
    }

    @Test
    void anUnknownColumnIsRefusedWithTheColumnsThereAre() {
        Problem problem = problem("test,cylinder,value,colour", "compression-dry,3,158psi,blue");
        assertThat(problem.column()).isEqualTo("colour");
        assertThat(problem.message()).contains("no column \"colour\"", "crankingVolts, crankingRpm, station");
    }

    @Test
    void aMissingColumnIsNamed() {
        assertThat(problem("cylinder,value", "3,158psi").message()).contains("missing");
    }

    @Test
    void aColumnThatStandsTwiceIsRefused() {
        assertThat(problem("test,value,value", "vacuum,18inHg,").message()).contains("twice");
    }

    @Test
    void cylinderNineOfEightIsRefused() {
        Problem problem = problem("test,cylinder,value", "compression-dry,9,158psi");
        assertThat(problem.message()).contains("Cylinder 9 of 8", "1 to 8");
        assertThat(problem.line()).isEqualTo(2);
        assertThat(problem.column()).isEqualTo("cylinder");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5psi", "\u22125 psi"})
    void aNegativePressureIsRefused(String value) {
        assertThat(problem("test,cylinder,value", "compression-dry,3," + value).message())
                .contains("0 to 5000 kPa");
    }

    @Test
    void aBareNumberIsRefusedWithTheUnitsItCouldHave() {
        assertThat(problem("test,cylinder,value", "compression-dry,3,158").message())
                .contains("has no unit", "158psi", "158kPa");
    }

    @ParameterizedTest
    @CsvSource({
        "plug, 3, shiny, 'normal, sooty, fuel-wet'",
        "leakdown, 3, huge, 'low, moderate, high'",
        "vacuum, '', shaky, 'steady-low, regular-flick'",
        "compresion, 3, 158psi, 'balance, compression-dry'"
    })
    void anUnknownWordListsTheWords(String test, String cylinder, String value, String words) {
        assertThat(problem("test,cylinder,value", test + "," + cylinder + "," + value)
                        .message())
                .contains(words);
    }

    @Test
    void anUnknownPlaceOfAirListsThePlaces() {
        assertThat(problem("test,cylinder,value,air", "leakdown,3,40%,bonnet").message())
                .contains("crankcase, exhaust, intake, neighbour, coolant");
    }

    @Test
    void aReadingBehindTheRestrictorAboveTheSupplyIsRefused() {
        assertThat(problem("test,cylinder,value,supply", "leakdown,3,90psi,80psi")
                        .message())
                .contains("more than the supply");
    }

    @ParameterizedTest
    @CsvSource({"balance, '', 62rpm, one cylinder", "oil-pressure, 3, 24psi, whole engine"})
    void aTestIsOfACylinderOrOfTheEngine(String test, String cylinder, String value, String said) {
        assertThat(problem("test,cylinder,value", test + "," + cylinder + "," + value)
                        .message())
                .contains(said);
    }

    @Test
    void whatSaysNothingOfATestIsRefusedAndNotDropped() {
        assertThat(problem("test,cylinder,value,supply", "balance,3,62rpm,80psi")
                        .column())
                .isEqualTo("supply");
    }

    @Test
    void oneBadRowLeavesAllOut() {
        ReadingSheet.Taken taken =
                taken(V8, "test,cylinder,value", "compression-dry,1,158psi", "compression-dry,9,158psi");
        assertThat(taken.readings()).isEmpty();
        assertThat(taken.problems()).extracting(Problem::line).containsExactly(3);
    }

    @Test
    void everyProblemIsToldAtOnce() {
        assertThat(taken(V8, "test,cylinder,value,strokes", "compression-dry,9,158,many", "plug,1,shiny,")
                        .problems())
                .extracting(Problem::column)
                .containsExactlyInAnyOrder("cylinder", "value", "strokes", "value");
    }

    @Test
    void aTableWithoutARowIsRefused() {
        assertThat(taken(V8, "test,cylinder,value").problems()).hasSize(1);
        assertThat(new ReadingSheet(V8, Sheets.TIME).read(List.of()).problems()).hasSize(1);
    }

    @Test
    void anEmptyRowIsPassedOver() {
        assertThat(Sheets.readings(V8, "test,cylinder,value", ",,", "plug,1,normal"))
                .hasSize(1);
    }
}
