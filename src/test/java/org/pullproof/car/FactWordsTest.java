package org.pullproof.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** As drawn on the sheet Car of the look: "84,300 mi", "$6,400", "820 ft". */
class FactWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ODOMETER; 84300mi; 84,300 mi",
                "ELEVATION; 820ft; 820 ft",
                "ELEVATION; 249,6 m; 249.6 m",
                "PRICE; 6400USD; $6,400",
                "PRICE; 1400,50 eur; 1,400.50 EUR",
                "BAND; 2600-5000rpm; 2,600 to 5,000 rpm",
                "SMALLEST_DIFFERENCE; 1.0%; 1.0 %",
                "COMPRESSION_RULE; 10-percent; no two cylinders more than 10 % apart",
                "ACCESS; plugs-out; plugs out",
                "MONTHS; 36; 36",
                "FUEL; 91 octane, 10000mi old; 91 octane, 10000mi old"
            })
    void aFactReadsAsPeopleWriteIt(Fact fact, String told, String words) {
        assertThat(FactWords.of(fact, told).replace('\u00a0', ' ')).isEqualTo(words);
    }

    @Test
    void figureAndUnitNeverPartAtTheEndOfALine() {
        assertThat(FactWords.of(Fact.ODOMETER, "84300mi")).isEqualTo("84,300\u00a0mi");
    }
}
