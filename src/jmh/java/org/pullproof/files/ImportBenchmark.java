package org.pullproof.files;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
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
import org.pullproof.app.PullFileReader;
import org.pullproof.dyno.HowRead;

/**
 * Reading a table of 100 MB as pulls, against reading it and parsing its numbers and nothing else; both in a heap that holds its
 * figures and neither its text nor its cells.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
public class ImportBenchmark {
    private static final long BYTES = 100L * 1000 * 1000;

    private Path file = Path.of("target", "benchmarks", "100-mb.csv");

    /** Pulls from 2,000 to 6,000 rpm one after another, 100 samples a second, until the file is large enough. */
    @Setup
    public void write() throws IOException {
        Files.createDirectories(file.getParent());
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            long written = put(out, "time s,rpm,power kW,torque Nm,throttle %,lambda,coolant C,oil temp C\n");
            for (long row = 0; written < BYTES; row++) {
                double rpm = 2000 + 4 * (row % 1000);
                written += put(
                        out,
                        String.format(
                                Locale.ROOT,
                                "%.2f,%.1f,%.3f,%.2f,%.1f,%.3f,%.1f,%.1f%n",
                                row * 0.01,
                                rpm,
                                rpm * 0.025,
                                238.7,
                                99.5,
                                0.871,
                                88.3,
                                96.1));
            }
        }
    }

    private static long put(OutputStream out, String line) throws IOException {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        out.write(bytes);
        return bytes.length;
    }

    @Benchmark
    public int asPulls() throws IOException {
        return new PullFileReader(new CsvFile())
                .table("100-mb.csv", FileBytes.of(file), HowRead.by(java.util.List.of()))
                .pulls()
                .size();
    }

    @Benchmark
    public double cellsAndNumbersOnly() throws IOException {
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
