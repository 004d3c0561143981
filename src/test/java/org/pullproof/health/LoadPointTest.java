package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.health.Sheets.I4;
import static org.pullproof.health.Sheets.assess;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.LoadPoint.Standing;

/** The limits (50 % leak-down, 8 psi) are common practice without a source. */
class LoadPointTest {
    private static Standing standing(String point, String... rows) {
        String[] lines = Stream.concat(Stream.of("test,cylinder,value"), Arrays.stream(rows))
                .toArray(String[]::new);
        return LoadPoint.of(assess(I4, lines)).stream()
                .filter(found -> found.name().contains(point))
                .findFirst()
                .orElseThrow()
                .standing();
    }

    @Test
    void ofAnUntouchedEngineNothingIsKnown() {
        assertThat(LoadPoint.of(assess(I4, List.of())))
                .hasSize(5)
                .extracting(LoadPoint::standing)
                .containsOnly(Standing.NOT_KNOWN);
    }

    @ParameterizedTest
    @CsvSource({
        "coolant, 'coolant-gas,,negative', MET",
        "coolant, 'coolant-gas,,positive', NOT_MET",
        "knock, 'observation,,no-knock', MET",
        "knock, 'observation,,knock-at-2500', NOT_MET",
        "oil, 'oil-pressure,,8psi', MET",
        "oil, 'oil-pressure,,7psi', NOT_MET",
        "code, 'codes,,P0171', MET",
        "code, 'codes,,P0302', NOT_MET",
        "code, 'codes,,not-ready', NOT_KNOWN",
        "holds, 'leakdown,2,50%', NOT_MET",
        "holds, 'leakdown,2,20%', NOT_KNOWN"
    })
    void aPointStandsByItsReading(String point, String row, Standing wanted) {
        assertThat(standing(point, row)).isEqualTo(wanted);
    }

    @Test
    void levelCompressionInEveryCylinderIsEnoughToSayThatTheyHold() {
        assertThat(standing(
                        "holds",
                        "compression-dry,1,172psi",
                        "compression-dry,2,175psi",
                        "compression-dry,3,170psi",
                        "compression-dry,4,174psi"))
                .isEqualTo(Standing.MET);
    }
}
