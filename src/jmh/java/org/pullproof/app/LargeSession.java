package org.pullproof.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;

/**
 * A session far larger than an owner ever has: pulls from 2,000 to 6,000 rpm, each in a file of its own, 50 a day, all on one setup.
 * Figures are invented.
 *
 * @param folder where it is made, once
 * @param pulls how many
 * @param samples of each
 */
record LargeSession(Path folder, int pulls, int samples) {
    private static final int A_DAY = 50;
    private static final LocalDateTime FIRST = LocalDateTime.of(2026, 1, 5, 8, 0);

    LargeSession(int pulls, int samples) {
        this(Path.of("target", "benchmarks", pulls + "-pulls-of-" + samples), pulls, samples);
    }

    /** The folder, with the session in it. */
    Path made() throws IOException {
        SessionFolder place = new SessionFolder(folder);
        if (!place.holdsSession()) {
            Files.createDirectories(folder);
            place.write(Session.begin("large", Tools.profile("i4-distributor")).withDays(days(place)));
        }
        return folder;
    }

    private List<DynoDay> days(SessionFolder place) throws IOException {
        List<Pull> made = new ArrayList<>();
        for (int i = 0; i < pulls; i++) {
            byte[] table = table(new Random(i)).getBytes(StandardCharsets.UTF_8);
            PullFile kept = place.keep("pull " + (i + 1) + ".csv", table);
            LocalDateTime time = FIRST.plusDays(i / A_DAY).plusMinutes(6L * (i % A_DAY));
            made.add(new Pull(
                    "as-found",
                    i + 1,
                    kept,
                    time,
                    Optional.empty(),
                    HowRead.by(List.of()),
                    Optional.empty(),
                    Optional.empty()));
        }
        Map<LocalDate, List<Pull>> byDay = made.stream()
                .collect(Collectors.groupingBy(pull -> pull.time().toLocalDate(), TreeMap::new, Collectors.toList()));
        return byDay.entrySet().stream()
                .map(day -> new DynoDay(day.getKey(), List.of(), day.getValue()))
                .toList();
    }

    private String table(Random random) {
        StringBuilder table = new StringBuilder("time s,rpm,power kW,lambda\n");
        double level = 100 + random.nextGaussian();
        for (int i = 0; i < samples; i++) {
            double rpm = 2000 + 4000.0 * i / samples;
            double power = level * rpm / 6000 * (1 - Math.pow((rpm - 4200) / 6000, 2)) + 0.3 * random.nextGaussian();
            table.append(String.format(Locale.ROOT, "%.3f,%.1f,%.3f,%.3f%n", 10.0 * i / samples, rpm, power, 0.87));
        }
        return table.toString();
    }
}
