package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalMarkTest {
    /** The nearest double is what {@link BigDecimal#doubleValue} tells; fixed seed, to the last bit. */
    @ParameterizedTest
    @ValueSource(ints = {1, 5, 9, 14, 15, 16, 17, 30})
    void anyFigureIsTheDoubleNearestToIt(int digits) {
        Random random = new Random(digits);
        for (int i = 0; i < 5000; i++) {
            String cell = cell(random, digits);
            assertThat(DecimalMark.POINT.figure(cell)).as(cell).isEqualTo(new BigDecimal(cell).doubleValue());
            assertThat(DecimalMark.COMMA.figure(cell.replace('.', ','))).isEqualTo(new BigDecimal(cell).doubleValue());
        }
    }

    private static String cell(Random random, int digits) {
        StringBuilder cell = new StringBuilder(random.nextInt(3) == 0 ? "-" : "");
        int mark = random.nextInt(digits + 1);
        for (int i = 0; i < digits; i++) {
            cell.append(i == mark ? "." : "").append((char) ('0' + random.nextInt(10)));
        }
        return cell.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", "1.2.3", "12a", "--1", "1e400", "NaN", "0x10", "1..2"})
    void whatIsNoFigureIsNone(String cell) {
        assertThat(DecimalMark.POINT.figure(cell)).isNaN();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2000|false",
                "2000;2000,5|true",
                "2,000;2.5|false",
                "1.000,5|true",
                "6,000;2,000|false",
                "7.250|true"
            })
    void allCellsTogetherTellTheMark(String cells, boolean comma) {
        MarkEvidence evidence = new MarkEvidence(100);
        for (String cell : cells.split(";", -1)) {
            evidence.see(cell);
            evidence.seeSpeed(cell);
        }
        assertThat(evidence.mark() == DecimalMark.COMMA).isEqualTo(comma);
    }

    @Test
    void wordsTellNothing() {
        MarkEvidence evidence = new MarkEvidence(100);
        evidence.see("idle, then 5,5");
        evidence.see("2000.5");
        evidence.seeSpeed("2000.5");
        assertThat(evidence.mark()).isEqualTo(DecimalMark.POINT);
    }
}
