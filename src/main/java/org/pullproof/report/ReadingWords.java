package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Reading;

/** A reading in words, as it was typed. */
final class ReadingWords {
    private ReadingWords() {}

    /** What was read: "158 psi, first 70 psi". */
    static String value(Reading reading) {
        if (reading instanceof Reading.Balance balance) {
            return Wording.typed(balance.drop()) + " drop";
        } else if (reading instanceof Reading.Compression compression) {
            return Wording.typed(compression.gauge())
                    + compression
                            .first()
                            .map(first -> ", first " + Wording.typed(first))
                            .orElse("");
        } else if (reading instanceof Reading.Leakdown leakdown) {
            return leak(leakdown.value());
        } else if (reading instanceof Reading.Sign sign) {
            return sign.figure().map(Wording::typed).or(sign::word).orElse("");
        } else if (reading instanceof Reading.Work work) {
            return work.what();
        }
        throw new IllegalArgumentException("No words for " + reading);
    }

    private static String leak(Reading.Leak leak) {
        if (leak instanceof Reading.Leak.Percentage percentage) {
            return Wording.typed(percentage.share());
        } else if (leak instanceof Reading.Leak.Behind behind) {
            return Wording.typed(behind.pressure()) + " behind the restrictor";
        } else if (leak instanceof Reading.Leak.Zone zone) {
            return zone.zone().key();
        }
        throw new IllegalArgumentException("No words for " + leak);
    }

    /** How it was read, as far as it was recorded. */
    static String made(Reading reading) {
        List<String> words = new ArrayList<>();
        if (reading instanceof Reading.Leakdown leakdown) {
            leakdown.supply().ifPresent(supply -> words.add("supply " + Wording.typed(supply)));
            leakdown.orifice().ifPresent(orifice -> words.add("restrictor " + Wording.typed(orifice)));
            words.add(air(leakdown.air()));
        }
        round(reading).ifPresent(words::add);
        words.add(Wording.conditions(reading.conditions()));
        return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String air(Optional<Set<AirPlace>> air) {
        return air.map(places -> places.isEmpty()
                        ? "no air heard"
                        : "air at "
                                + places.stream().sorted().map(AirPlace::key).collect(Collectors.joining(", ")))
                .orElse("nobody listened for air");
    }

    private static Optional<String> round(Reading reading) {
        int round = 1;
        if (reading instanceof Reading.Balance balance) {
            round = balance.round();
        } else if (reading instanceof Reading.Compression compression) {
            round = compression.round();
        } else if (reading instanceof Reading.Leakdown leakdown) {
            round = leakdown.round();
        }
        return round > 1 ? Optional.of("round " + round) : Optional.empty();
    }
}
