package org.pullproof.app;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.pullproof.testing.Tools;

/** Opening a session of 1,000 pulls of 3,000 samples, against reading its files and parsing their numbers and nothing else. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 8)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class OpenBenchmark {
    private static final LargeSession SESSION = new LargeSession(1000, 3000);

    @Setup
    public void write() throws IOException {
        SESSION.made();
    }

    @Benchmark
    public int opened() throws IOException {
        return Tools.ofTheProgram().desk().open(SESSION.folder()).traces().size();
    }

    @Benchmark
    public double cellsAndNumbersOnly() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(SESSION.folder().resolve("pulls"))) {
            files = all.toList();
        }
        double sum = 0;
        for (Path file : files) {
            sum += numbers(file);
        }
        return sum;
    }

    private static double numbers(Path file) throws IOException {
        double sum = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(file)) {
            for (CsvRecord row : reader) {
                if (row.getStartingLineNumber() > 1) {
                    for (int i = 0; i < row.getFieldCount(); i++) {
                        sum += Double.parseDouble(row.getField(i));
                    }
                }
            }
        }
        return sum;
    }
}
