package org.pullproof.cli;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import picocli.CommandLine.Option;

/** When the thing that is told was done, read or set. */
final class WhenOption {
    @Option(
            names = "--at",
            paramLabel = "TIME",
            converter = Arguments.TimeArgument.class,
            description = "When that was, such as 2026-06-14T13:40; without it, now.")
    private Optional<LocalDateTime> at = Optional.empty();

    /** The time that was told, or what the clock shows, to the second. */
    LocalDateTime by(Clock clock) {
        return at.orElseGet(() -> LocalDateTime.now(clock).withNano(0));
    }
}
