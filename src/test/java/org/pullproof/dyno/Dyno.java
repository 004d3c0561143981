package org.pullproof.dyno;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.engine.Setup;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Standard;

/** One dyno day for tests, built pull by pull; power is the same at every speed. */
final class Dyno {
    static final List<Setup> SETUPS = List.of(Setup.named("base", "base"), Setup.named("timing-32", "timing 32°"));
    private static final LocalDate DATE = LocalDate.of(2026, 6, 14);

    private final List<AirReading> air;
    private final List<Pull> pulls = new ArrayList<>();
    private final Map<String, Trace> traces = new HashMap<>();

    private Dyno(List<AirReading> air) {
        this.air = air;
    }

    static Dyno day(AirReading... air) {
        return new Dyno(List.of(air));
    }

    Dyno pull(String setup, String time, double kilowatt) {
        return add(setup, time, fresh(), Optional.empty(), Optional.empty(), level(2000, 6000, kilowatt));
    }

    Dyno from(String setup, String time, int from, int to) {
        return add(setup, time, fresh(), Optional.empty(), Optional.empty(), level(from, to, 150));
    }

    Dyno corrected(String setup, String time, double kilowatt, Standard already) {
        return add(setup, time, fresh(), Optional.of(already), Optional.empty(), level(2000, 6000, kilowatt));
    }

    /** Reaches from 2000 to 4000 rpm only. */
    Dyno excluded(String setup, String time, double kilowatt, String reason) {
        return add(setup, time, fresh(), Optional.empty(), Optional.of(reason), level(2000, 4000, kilowatt));
    }

    /** The file of the pull before it once more. */
    Dyno again(String setup, String time, double kilowatt) {
        String hash = pulls.get(pulls.size() - 1).file().sha256();
        return add(setup, time, hash, Optional.empty(), Optional.empty(), level(2000, 6000, kilowatt));
    }

    Dyno coarse(String setup, String time) {
        double[] rpm =
                IntStream.rangeClosed(0, 40).mapToDouble(i -> 2000 + 100.0 * i).toArray();
        return add(setup, time, fresh(), Optional.empty(), Optional.empty(), Traces.of(rpm, speed -> 150_000));
    }

    private Dyno add(
            String setup,
            String time,
            String hash,
            Optional<Standard> already,
            Optional<String> excluded,
            Trace trace) {
        int number =
                (int) pulls.stream().filter(pull -> pull.setup().equals(setup)).count() + 1;
        LocalDateTime made = DATE.atTime(LocalTime.parse(time));
        Pull pull = new Pull(setup, number, new PullFile("p.csv", "p.csv", hash), made, List.of(), already, excluded);
        pulls.add(pull);
        traces.put(pull.id(), trace);
        return this;
    }

    private String fresh() {
        return String.format("%064x", pulls.size() + 1);
    }

    private static Trace level(int from, int to, double kilowatt) {
        return Traces.even(from, to, rpm -> kilowatt * 1e3);
    }

    List<DynoDay> days() {
        return List.of(new DynoDay(DATE, air, pulls));
    }

    Map<String, Trace> traces() {
        return traces;
    }
}
