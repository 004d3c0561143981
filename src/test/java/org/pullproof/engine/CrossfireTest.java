package org.pullproof.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CrossfireTest {
    /** crossfire_pairs.csv: 12 generic layouts by the rule of Army TM 5-4210-230-14&P-1. */
    @ParameterizedTest
    @CsvFileSource(resources = "crossfire_pairs.csv", numLinesToSkip = 3)
    void pairsOfTwelveLayoutsAgreeWithTheList(
            String layout, String order, String banks, int n, double interval, String pairs, String adjacent) {
        EngineProfile engine = Engines.even(banks, order);
        assertThat(words(Crossfire.pairs(engine).stream())).as(layout).isEqualTo(split(pairs));
        assertThat(words(Crossfire.pairs(engine).stream().filter(Crossfire.Pair::adjacent)))
                .as(layout)
                .isEqualTo(split(adjacent));
    }

    /** Army TM 5-4210-230-14&P-1: order A has 5 and 7 side by side on one bank, and 8 and 4 apart on the other. */
    @Test
    void theClassicVEightKeepsFiveAndSevenApart() {
        EngineProfile engine = Engines.even("1-3-5-7 | 2-4-6-8", "1-8-4-3-6-5-7-2");
        assertThat(Crossfire.pairs(engine))
                .containsExactly(new Crossfire.Pair(8, 4, false), new Crossfire.Pair(5, 7, true));
    }

    private static List<String> words(Stream<Crossfire.Pair> pairs) {
        return pairs.map(pair -> pair.first() + ">" + pair.second()).toList();
    }

    private static List<String> split(String pairs) {
        return pairs == null ? List.of() : List.of(pairs.split(" ", -1));
    }
}
