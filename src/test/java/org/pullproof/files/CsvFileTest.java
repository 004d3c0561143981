package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.files.CsvFile.Row;

class CsvFileTest {
    private final CsvFile file = new CsvFile();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a,b\n1,2\n",
                "a;b\n1;2\n",
                "a\tb\n1\t2\n",
                "a,b\r\n1,2\r\n",
                "\"a\",\"b\"\n\"1\",\"2\"",
                "a,b\r1,2"
            })
    void separatorQuotesAndLineEndsAreFound(String text) throws BadFileException {
        assertThat(rows(text)).containsExactly(new Row(1, List.of("a", "b")), new Row(2, List.of("1", "2")));
    }

    @Test
    void aLineWithoutEndIsRefusedBeforeItIsTakenApart() {
        byte[] endless = ("a,b\n" + "1,".repeat(600_000)).getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> file.rows("t.csv", endless))
                .hasMessage(
                        "t.csv, line 2: the line is longer than a million characters; save it as CSV, one row a line.");
    }

    @Test
    void aDecimalCommaIsNoSeparatorBesideSemicolons() throws BadFileException {
        assertThat(rows("n;P\n2000;43,3\n2025;44,1\n").get(1).cells()).containsExactly("2000", "43,3");
    }

    @Test
    void aPreambleWithCommasDoesNotHideTheTabs() throws BadFileException {
        assertThat(rows("Air: 24.1 C, 98.4 kPa, 46 %\n\nrpm\tkW\n2000\t43\n2025\t44\n")
                        .get(1))
                .isEqualTo(new Row(3, List.of("rpm", "kW")));
    }

    @Test
    void separatorsInsideQuotesStayInTheirCell() throws BadFileException {
        assertThat(rows("test,air\nleakdown,\"exhaust;intake\"\nleakdown,\"exhaust;intake\"\n")
                        .get(1)
                        .cells())
                .containsExactly("leakdown", "exhaust;intake");
    }

    @Test
    void anInchMarkInsideACellIsKept() throws BadFileException {
        assertThat(rows("name,value\ngap,0.040\"\nbore,4\"\n").get(2).cells()).containsExactly("bore", "4\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE", "UTF-8"})
    void aByteOrderMarkTellsTheEncoding(String charset) throws BadFileException {
        String marked = "\uFEFFn °,µ\n1,2\n";
        byte[] bytes = marked.getBytes(Charset.forName(charset));
        assertThat(file.rows("pull.csv", bytes).get(0).cells()).containsExactly("n °", "µ");
    }

    @Test
    void westernBytesAreReadWhereTheyAreNoUtf8() throws BadFileException {
        byte[] bytes = "°C,µ\n1,2\n".getBytes(Charset.forName("windows-1252"));
        assertThat(file.rows("pull.csv", bytes).get(0).cells()).containsExactly("°C", "µ");
    }

    /** What is no UTF-8 may first be met megabytes below. */
    @Test
    void oneWesternByteAtTheEndMakesAllOfItWestern() throws BadFileException {
        String text = "°C,µ\n" + "1,2\n".repeat(300_000) + "3,µ\n";
        List<Row> rows = file.rows("pull.csv", text.getBytes(Charset.forName("windows-1252")));
        assertThat(rows.get(0).cells()).containsExactly("°C", "µ");
        assertThat(rows.get(300_001)).isEqualTo(new Row(300_002, List.of("3", "µ")));
    }

    @Test
    void whoWantsNoMoreRowsGetsNone() throws BadFileException {
        List<Row> taken = new ArrayList<>();
        file.table("pull.csv", FileBytes.of("a\n1\n2\n3\n".getBytes(StandardCharsets.UTF_8)))
                .each(row -> {
                    taken.add(row);
                    return taken.size() < 2;
                });
        assertThat(taken).extracting(Row::line).containsExactly(1, 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n\n \t\n"})
    void anEmptyFileIsSaid(String text) {
        assertThatThrownBy(() -> rows(text))
                .hasMessage("pull.csv: the file is empty; a table with a header row is expected.");
    }

    @Test
    void aQuoteThatDoesNotCloseIsSaidWithItsLine() {
        assertThatThrownBy(() -> rows("rpm,kW\n2000,\"43\n2025,44\n2050,45\n"))
                .hasMessage("pull.csv, line 2: a quotation mark opens in this row and does not close.");
    }

    @Test
    void aPictureIsNoTable() {
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13};
        assertThatThrownBy(() -> file.rows("pull.png", png))
                .hasMessage("pull.png: the file is not a table of text; save it as CSV, one row a line.");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyBytesAreRowsOrASentence(long seed) {
        byte[] bytes = new byte[3000];
        new Random(seed).nextBytes(bytes);
        ByteArrayOutputStream withoutZero = new ByteArrayOutputStream();
        for (byte each : bytes) {
            withoutZero.write(each == 0 ? '"' : each);
        }
        assertThat(outcome(withoutZero.toByteArray())).isNotEmpty();
    }

    private String outcome(byte[] bytes) {
        try {
            return file.rows("pull.csv", bytes).size() + " rows";
        } catch (BadFileException sentence) {
            return sentence.problems().toString();
        }
    }

    private List<Row> rows(String text) throws BadFileException {
        return file.rows("pull.csv", text.getBytes(StandardCharsets.UTF_8));
    }
}
