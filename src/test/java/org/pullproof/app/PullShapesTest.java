package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.Trace;
import org.pullproof.files.CsvFile;
import org.pullproof.files.FileBytes;

/**
 * Pull files as loggers and dynos write them, from bytes to samples. The figures are those of {@code expected.jsonl}, made
 * outside this program by the law of torque named beside it: one peak for all shapes, within 0.1 %.
 */
class PullShapesTest {
    private static final double PEAK_KW = 128.1752;
    private static final double PEAK_RPM = 5350;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "A1_plain_hp_lbft.csv",
                "A2_semicolon_decimal_comma.csv",
                "A3_preamble_units_row_tab.txt",
                "A6_utf16_quoted.csv",
                "A7_gaps_and_footer.csv",
                "A8_torque_only.csv"
            })
    void thePeakIsFoundInEveryShape(String file) throws Exception {
        Trace trace = read(file).trace();
        int peak = IntStream.range(0, trace.size()).reduce(0, (a, b) -> trace.watt(b) > trace.watt(a) ? b : a);
        assertThat(trace.watt(peak) / 1e3).isCloseTo(PEAK_KW, withinPercentage(0.1));
        assertThat(trace.rpm(peak)).isEqualTo(PEAK_RPM);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "A1_plain_hp_lbft.csv",
                "A2_semicolon_decimal_comma.csv",
                "A3_preamble_units_row_tab.txt",
                "A6_utf16_quoted.csv",
                "A7_gaps_and_footer.csv",
                "A8_torque_only.csv"
            })
    void theWholeRangeIsTakenIn(String file) throws Exception {
        Trace trace = read(file).trace();
        assertThat(trace.firstRpm()).isEqualTo(2000);
        assertThat(trace.lastRpm()).isEqualTo(6000);
    }

    /** The file ends in words below its figures, and has blank cells in columns that are not needed. */
    @Test
    void theFooterIsNamedLineByLine() throws Exception {
        assertThat(read("A7_gaps_and_footer.csv").problems())
                .extracting(problem -> problem.message())
                .anySatisfy(message -> assertThat(message).startsWith("\"Max power\" is not a figure"))
                .anySatisfy(message -> assertThat(message).startsWith("\"End of run\" is not a figure"));
    }

    @Test
    void rollSpeedAgainstTimeIsRefusedAndNotMisread() {
        assertThatThrownBy(() -> read("A4_time_and_roll_speed.csv"))
                .hasMessageStartingWith("A4_time_and_roll_speed.csv, line 1: the file has")
                .hasMessageContaining("no power or torque column; columns found: time s, roll speed rad/s, engine rpm");
    }

    private static PullTable read(String file) throws Exception {
        return new PullFileReader(new CsvFile()).table(file, FileBytes.of(bytes(file)), HowRead.by(List.of()));
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = PullTable.class.getResourceAsStream(file)) {
            return Objects.requireNonNull(in, file).readAllBytes();
        }
    }
}
