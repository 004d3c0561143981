package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.car.Car;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;

/** What must hold for any readings. */
class WeighingPropertiesTest {
    private static FaultFindings faults(ReferenceCase one, List<Reading> readings) {
        return Sheets.assess(one.profile(), readings).faults();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theOrderOfReadingsDoesNotMatter(long seed) {
        ReferenceCase one = ReferenceCase.named("d9-rings-one-i6");
        List<Reading> shuffled = new ArrayList<>(one.readings());
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(faults(one, shuffled)).isEqualTo(faults(one, one.readings()));
    }

    @Test
    void aReadingTakenAwayLeavesNoTrace() {
        ReferenceCase one = ReferenceCase.named("d3-exhaust-valve-v6");
        ReferenceCase more = one.with("leakdown,2,60%,,,,90psi,1.0mm,crankcase,,,warm,,");
        assertThat(faults(one, more.readings())).isNotEqualTo(faults(one, one.readings()));
        assertThat(faults(one, more.readings().subList(0, one.readings().size())))
                .isEqualTo(faults(one, one.readings()));
    }

    @Test
    void tenRepeatsOfADryReadingCountOnce() {
        ReferenceCase one = ReferenceCase.named("d4a-neighbours-i4");
        assertThat(one.with(repeated("compression-dry,2,105psi,,6,%d,,,,open,all-out,warm,10.6V,"))
                        .posterior()
                        .sound())
                .isEqualTo(one.posterior().sound());
    }

    /** A drop a fifth below the others, ten times the same: the cylinder may just be uneven. */
    @Test
    void tenRepeatsOfAWeakDropDoNotMakeCertainty() {
        ReferenceCase one = ReferenceCase.named("d8-altitude-only-i4");
        double sound = one.with(repeated("balance,2,80rpm,,,%d,,,,,,hot,,"))
                .posterior()
                .p(2, Fault.SOUND);
        assertThat(sound).isBetween(0.05, 0.999);
    }

    private static String[] repeated(String row) {
        List<String> rows = new ArrayList<>();
        for (int round = 2; round <= 11; round++) {
            rows.add(String.format(row, round));
        }
        return rows.toArray(String[]::new);
    }

    /** Low readings all round at a closed throttle are a spoiled test, and no cylinder is blamed. */
    @Test
    void aClosedThrottleSpoilsTheTestAndBlamesNoCylinder() {
        List<Reading> readings = Sheets.readings(
                Sheets.I4,
                "test,cylinder,value,strokes,throttle,plugs",
                "compression-dry,1,120psi,6,closed,all-out",
                "compression-dry,2,122psi,6,closed,all-out",
                "compression-dry,3,118psi,6,closed,all-out",
                "compression-dry,4,121psi,6,closed,all-out");
        FaultFindings faults = Sheets.assess(Sheets.I4, readings).faults();
        assertThat(faults.engineWide().get(0).key()).isEqualTo(EngineState.TEST_SPOILED.key());
        assertThat(faults.cylinders()).noneMatch(FaultFindings.CylinderChances::calledFaulty);
    }

    /** Likelihood ratios of the trade, common practice, no source: odds 0.06/0.94 · 10 · 8. */
    @Test
    void knockAndLowOilPressureMultiplyTheOddsOfTheBottomEnd() {
        List<Reading> readings =
                Sheets.readings(Sheets.I4, "test,cylinder,value", "oil-pressure,,6psi", "observation,,knock-at-2500");
        double bottomEnd = Sheets.assess(Sheets.I4, readings).faults().engineWide().stream()
                .filter(chance -> chance.key().equals("bottom-end"))
                .findFirst()
                .orElseThrow()
                .probability();
        double odds = 0.06 / 0.94 * 10 * 8;
        assertThat(bottomEnd).isCloseTo(odds / (1 + odds), within(1e-9));
    }

    @Test
    void gasInTheCoolantRaisesItsFaultInEveryCylinder() {
        ReferenceCase one = ReferenceCase.named("d1-sound-v8");
        double before = one.posterior().anywhere(Fault.GASKET_COOLANT);
        double after = one.with("coolant-gas,,positive,,,,,,,,,,,").posterior().anywhere(Fault.GASKET_COOLANT);
        assertThat(after / (1 - after)).isCloseTo(25 * before / (1 - before), within(0.1 * after / (1 - after)));
    }

    @ParameterizedTest
    @CsvSource({"60, true", "95, false"})
    void aLowStarterHumpSpeaksOfALeakWhereCompressionWasNotRead(int percent, boolean raised) {
        List<Reading> humps = Sheets.readings(
                Sheets.I4,
                "test,cylinder,value",
                "starter-current,1,100%",
                "starter-current,2," + percent + "%",
                "starter-current,3,98%",
                "starter-current,4,99%");
        double leak = chance(humps, Fault.EXHAUST_VALVE);
        double unread = chance(List.of(), Fault.EXHAUST_VALVE);
        assertThat(leak > unread).isEqualTo(raised);
    }

    private static double chance(List<Reading> readings, Fault fault) {
        return ReferenceCase.MODEL
                .weigh(new WeighedReadings(
                                Evidence.of(readings, Sheets.I4, Car.named("test"), Sheets.US), ReferenceCase.CONSTANTS)
                        .all())
                .p(2, fault);
    }
}
