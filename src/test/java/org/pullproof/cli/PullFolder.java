package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;

/** A car in a test's folder to which pulls are added as files, one every three minutes; there is no air, so measured power counts. */
final class PullFolder {
    private final CommandHarness pullproof = new CommandHarness();
    private final Path folder;
    private int pulls;

    PullFolder(Path folder) {
        this.folder = folder;
        pullproof.run("new", car(), "--profile", "i4-distributor", "--name", "car");
    }

    Path car() {
        return folder.resolve("car");
    }

    CommandHarness.Outcome run(Object... arguments) {
        return pullproof.run(arguments);
    }

    /** Pulls whose power is the same at every speed, so that any band has it. */
    void pull(String setup, double... kilowatts) throws IOException {
        for (double kilowatt : kilowatts) {
            add(setup, rpm -> kilowatt);
        }
    }

    /** A pull with a curve of its own, and what else is told of its setup. */
    void add(String setup, IntToDoubleFunction kilowatt, Object... told) throws IOException {
        StringBuilder file = new StringBuilder("rpm,power kW\n");
        for (int rpm = 2000; rpm <= 5000; rpm += 20) {
            file.append(rpm).append(',').append(kilowatt.applyAsDouble(rpm)).append('\n');
        }
        Path made = Files.writeString(folder.resolve("pull-" + ++pulls + ".csv"), file);
        String time = String.format(Locale.ROOT, "2026-06-14T%02d:%02d", 13 + pulls / 20, 3 * (pulls % 20));
        Object[] first = {"add-pulls", car(), made, "--setup", setup, "--at", time};
        CommandHarness.Outcome outcome =
                pullproof.run(Stream.of(first, told).flatMap(Stream::of).toArray());
        assertThat(outcome.status()).as(outcome.err()).isZero();
    }

    JsonNode json(String command) throws IOException {
        CommandHarness.Outcome outcome = pullproof.run(command, car(), "--json");
        assertThat(outcome.err()).isEmpty();
        return new ObjectMapper().readTree(outcome.out());
    }
}
