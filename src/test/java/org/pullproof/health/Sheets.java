package org.pullproof.health;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.pullproof.car.Car;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Geometry;
import org.pullproof.files.TradeConstants;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.ReadingSheet.Row;
import org.pullproof.health.ReadingSheet.Taken;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.session.Judgement;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** Tables of readings for tests. */
public final class Sheets {
    static final LocalDateTime TIME = LocalDateTime.of(2026, 6, 14, 10, 0);
    static final Figures US = new Figures(UnitSystem.US);
    static final HealthAssessor ASSESSOR = new HealthAssessor(
            new TradeConstants().health(Judgement.own()),
            new FaultModel(new TradeConstants().faults(Judgement.own())),
            new TradeFiles().testCosts());
    static final EngineProfile V8 = Tools.profile("v8-distributor-order-a");
    static final EngineProfile I4 = Tools.profile("i4-coil-on-plug");

    private Sheets() {}

    /** Lines with commas between cells, the header first. */
    static Taken taken(EngineProfile profile, String... lines) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            rows.add(new Row(i + 1, List.of(lines[i].split(",", -1))));
        }
        return new ReadingSheet(profile, TIME).read(rows);
    }

    /** Readings of a table that must have no problem. */
    public static List<Reading> readings(EngineProfile profile, String... lines) {
        Taken taken = taken(profile, lines);
        if (!taken.problems().isEmpty()) {
            throw new AssertionError(taken.problems());
        }
        return taken.readings();
    }

    /** A table from the test resources; lines with # tell its source. */
    static String[] table(String name) {
        try (InputStream in = Sheets.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toArray(String[]::new);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static HealthFindings assess(EngineProfile profile, List<Reading> readings) {
        return assess(profile, readings, Car.named("test"));
    }

    static HealthFindings assess(EngineProfile profile, List<Reading> readings, Car car) {
        return ASSESSOR.assess(readings, profile, car, US);
    }

    static HealthFindings assess(EngineProfile profile, String... lines) {
        return assess(profile, readings(profile, lines));
    }

    static EngineProfile withGeometry(EngineProfile other, Geometry geometry) {
        return new EngineProfile(
                other.id(),
                other.name(),
                other.layout(),
                other.bankAngleDegrees(),
                other.banks(),
                other.firing(),
                other.rotor(),
                geometry,
                other.plugs(),
                other.ignition(),
                other.fuel(),
                other.charged(),
                other.interference(),
                other.steps(),
                other.sources());
    }

    /** Lines put behind a table. */
    static String[] with(String[] table, String... more) {
        return Stream.concat(Stream.of(table), Stream.of(more)).toArray(String[]::new);
    }
}
