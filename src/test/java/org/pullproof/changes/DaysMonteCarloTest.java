package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.changes.SimulatedSessions.Drawn;
import org.pullproof.changes.SimulatedSessions.Trouble;

/**
 * How often the interval of a change holds the truth over three days, 2,000 invented sessions a cell, against the table of section
 * 12 of the method: coverage within 3 points. Each day has a level of its own (1.2 %) and its own course. Prints both beside each other into
 * {@code target/monte-carlo-days.txt}; run by {@code mvn test -Pmonte-carlo}.
 */
@Tag("monte-carlo")
class DaysMonteCarloTest {
    private static final int SESSIONS = 2000;
    private static final double DAY_SD = 1.2;
    private static final List<String> ACROSS = List.of("CD", "EF", "BG", "DF");
    private static final Path PRINTED = Path.of("target", "monte-carlo-days.txt");

    /** Days, pairs, coverage none/lin/exp/block/out, false gains in the same order. */
    @ParameterizedTest
    @CsvSource({
        "AABBCC AADDEE AAFFGG, within, 96/93/95/92/92, 2/0/1/2/3",
        "AABBCC AADDEE AAFFGG, across, 97/96/96/94/95, 2/3/3/3/3",
        "AABBCCAA AADDEEAA AAFFGGAA, within, 93/95/95/87/89, 3/2/2/6/5",
        "AABBCCAA AADDEEAA AAFFGGAA, across, 94/95/94/88/91, 3/3/3/7/5",
        "ABBCC ADDEE AFFGG, across, 96/95/95/93/92, 2/4/3/4/5",
        "BBCC DDEE FFGG, within, 98/95/91/93/94, 1/0/3/2/2",
        "BBCC DDEE FFGG, across, 92/91/75/91/91, 4/6/13/5/5"
    })
    void theIntervalHoldsTheTruthAsOftenAsTheTableSays(String days, String which, String covered, String falseGains)
            throws IOException {
        List<Tally> cells = Arrays.stream(Trouble.values())
                .parallel()
                .map(trouble -> cell(parts(days, " "), pairs(days, which), trouble))
                .toList();
        Files.writeString(
                PRINTED,
                String.format(
                        Locale.ROOT,
                        "| %s | %s | %s (%s) | %s (%s) |%n",
                        days,
                        which,
                        printed(cells, Tally::covered),
                        covered,
                        printed(cells, Tally::falseGains),
                        falseGains),
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
        Iterator<String> table = parts(covered, "/").iterator();
        // the table is printed to whole points
        cells.forEach(cell -> assertThat(cell.covered())
                .as("coverage of %s, %s, in the order of the table", days, which)
                .isCloseTo(Double.parseDouble(table.next()), within(3.5)));
    }

    private static List<String> parts(String text, String between) {
        return List.of(text.split(between, -1));
    }

    /** Older and newer setting: a step inside a day, or one made from the reference of that day; or one across days. */
    private static List<String> pairs(String days, String which) {
        if (which.equals("across")) {
            return ACROSS;
        }
        return days.contains("A") ? List.of("AB", "BC", "AD", "DE", "AF", "FG") : List.of("BC", "DE", "FG");
    }

    private static Tally cell(List<String> days, List<String> pairs, Trouble trouble) {
        SimulatedSessions sessions = new SimulatedSessions(20260614);
        char first = days.get(0).charAt(0);
        Tally tally = new Tally();
        for (int i = 0; i < SESSIONS; i++) {
            Drawn drawn = sessions.days(days, trouble, DAY_SD);
            ChangeFit fit = ChangeFit.of(drawn.pulls(), Prior.OF_THIS_PROJECT);
            for (String pair : pairs) {
                int older = pair.charAt(0) - first;
                int newer = pair.charAt(1) - first;
                tally.add(drawn.levels().get(newer) - drawn.levels().get(older), fit.compare(newer, older));
            }
        }
        return tally;
    }

    /** Counts how often an interval holds the truth, and how often no change is called a gain. */
    private static final class Tally {
        private int all;
        private int holding;
        private int same;
        private int gains;

        void add(double truth, Estimate estimate) {
            all++;
            holding += estimate.low() <= truth && truth <= estimate.high() ? 1 : 0;
            if (truth == 0) {
                same++;
                gains += estimate.low() > 0 ? 1 : 0;
            }
        }

        double covered() {
            return 100.0 * holding / all;
        }

        double falseGains() {
            return 100.0 * gains / same;
        }
    }

    private static String printed(List<Tally> cells, java.util.function.ToDoubleFunction<Tally> figure) {
        return cells.stream()
                .map(cell -> String.format(Locale.ROOT, "%.1f", figure.applyAsDouble(cell)))
                .collect(Collectors.joining("/"));
    }
}
