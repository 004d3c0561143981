package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.car.Car;
import org.pullproof.health.leakdown.LeakReading;

/** A leak-down tester whose zero is off; the expected percentages are by hand: 1 − shown/closed. */
class ClosedHoseTest {
    private static final String HEAD = "test,cylinder,value,supply,closed";

    private static Reading.Leakdown leakdown(String value, String supply, String closed) {
        return (Reading.Leakdown) Sheets.readings(Sheets.V8, HEAD, "leakdown,1," + value + "," + supply + "," + closed)
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "88.2psi, 100psi, '', 11.8",
        "88.2psi, 100psi, 98psi, 10.0",
        "14%, '', 4%, 10.4167",
        "14%, 100psi, 100psi, 14.0",
        "14%, 100psi, 96psi, 10.4167"
    })
    void aLeakIsCountedFromThere(String value, String supply, String closed, double leak) {
        assertThat(LeakReading.percent(leakdown(value, supply, closed)).orElseThrow())
                .isCloseTo(leak, within(1e-3));
    }

    @Test
    void aPressureWithoutTheSupplyTellsNothing() {
        assertThat(LeakReading.closedShare(leakdown("14%", "", "96psi"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"96psi, true", "99psi, false"})
    void aZeroThatIsOffIsSaid(String closed, boolean said) {
        HealthFindings findings = Sheets.ASSESSOR.assess(
                Sheets.readings(Sheets.V8, HEAD, "leakdown,1,14%,100psi," + closed),
                Sheets.V8,
                Car.named("van"),
                Sheets.US);

        assertThat(findings.remarks().stream().anyMatch(words -> words.contains("Set its zero before the next run")))
                .isEqualTo(said);
    }
}
