package org.pullproof.simulation;

import java.time.LocalDateTime;
import java.util.Locale;

/** One hour of hired dyno time: air read every half hour, a pull every five minutes, two throw-away pulls before the first. */
final class DemoDay {
    private static final int MINUTES_A_PULL = 5;
    private static final int MINUTES_A_CHANGE = 12;
    private static final int MINUTES_BETWEEN_READINGS = 30;

    private final DemoSession session;
    private final SimulatedDyno dyno;
    private SimulatedAir air;
    private LocalDateTime time;
    private LocalDateTime airRead;
    private int files;

    DemoDay(DemoSession session, long seed, double dayPercent, LocalDateTime start, SimulatedAir air) {
        this.session = session;
        this.dyno = new SimulatedDyno(seed, dayPercent);
        this.time = start;
        this.air = air;
        this.airRead = start.minusMinutes(MINUTES_BETWEEN_READINGS);
        dyno.newBlock();
        dyno.pull(0, air);
        dyno.pull(0, air);
    }

    LocalDateTime time() {
        return time;
    }

    /**
     * Pulls at one setup.
     *
     * @param plantedPercent what the setup truly makes over base, percent
     * @param more further arguments of {@code add-pulls}
     */
    DemoDay pulls(String setup, double plantedPercent, int count, String... more) {
        for (int i = 0; i < count; i++) {
            readAir();
            files++;
            String name = String.format(Locale.ROOT, "%tm%<td-%02d.csv", time, files);
            session.run(arguments(name, dyno.pull(plantedPercent, air), setup, more));
            time = time.plusMinutes(MINUTES_A_PULL);
        }
        dyno.newBlock();
        time = time.plusMinutes(MINUTES_A_CHANGE);
        return this;
    }

    private Object[] arguments(String name, String figures, String setup, String... more) {
        Object[] first = {
            "add-pulls", session.folder(), session.file(name, figures), "--setup", setup, "--at", time.toString()
        };
        Object[] all = java.util.Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return all;
    }

    private void readAir() {
        if (time.isBefore(airRead.plusMinutes(MINUTES_BETWEEN_READINGS))) {
            return;
        }
        air = new SimulatedAir(air.kpa() - 0.05, air.celsius() + 0.4, air.humidityPercent() - 1);
        session.run(
                "weather",
                "--pressure",
                String.format(Locale.ROOT, "%.2fkPa", air.kpa()),
                "--temperature",
                String.format(Locale.ROOT, "%.1fC", air.celsius()),
                "--humidity",
                String.format(Locale.ROOT, "%.0f%%", air.humidityPercent()),
                "--session",
                session.folder(),
                "--at",
                time.toString());
        airRead = time;
    }
}
