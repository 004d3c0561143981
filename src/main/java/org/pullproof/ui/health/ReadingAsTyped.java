package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.Reading;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;

/** A reading in words: what was read, as typed, and how it was made. */
final class ReadingAsTyped {
    private ReadingAsTyped() {}

    /** What was read: "158 psi, first stroke 85 psi". */
    static String value(Reading reading) {
        if (reading instanceof Reading.Balance balance) {
            return shown(balance.drop());
        }
        if (reading instanceof Reading.Compression compression) {
            return shown(compression.gauge())
                    + compression
                            .first()
                            .map(first -> ", first stroke " + shown(first))
                            .orElse("");
        }
        if (reading instanceof Reading.Leakdown leakdown) {
            return leak(leakdown.value())
                    + leakdown.air().map(ReadingAsTyped::air).orElse("");
        }
        if (reading instanceof Reading.Sign sign) {
            return sign.figure().map(ReadingAsTyped::shown).or(sign::word).orElse("");
        }
        return ((Reading.Work) reading).what();
    }

    private static String leak(Reading.Leak leak) {
        if (leak instanceof Reading.Leak.Percentage percentage) {
            return shown(percentage.share());
        }
        if (leak instanceof Reading.Leak.Behind behind) {
            return shown(behind.pressure()) + " behind the restrictor";
        }
        return ((Reading.Leak.Zone) leak).zone().key();
    }

    private static String air(java.util.Set<AirPlace> places) {
        return places.isEmpty()
                ? ", no air heard"
                : places.stream().sorted().map(AirPlace::key).collect(Collectors.joining(", ", ", air at the ", ""));
    }

    /** How it was made: "6 strokes, throttle open, all plugs out"; what was not recorded is left out. */
    static String how(Reading reading) {
        Conditions made = reading.conditions();
        List<String> words = new ArrayList<>();
        if (reading instanceof Reading.Leakdown leakdown) {
            leakdown.supply().ifPresent(supply -> words.add("supply " + shown(supply)));
            leakdown.orifice().ifPresent(orifice -> words.add("orifice " + shown(orifice)));
        }
        made.strokes().ifPresent(strokes -> words.add(strokes + " strokes"));
        made.throttle().ifPresent(throttle -> words.add("throttle " + lower(throttle)));
        made.plugs()
                .ifPresent(plugs -> words.add(plugs == Conditions.Plugs.ALL_OUT ? "all plugs out" : "one plug out"));
        made.engine().ifPresent(warmth -> words.add(lower(warmth)));
        made.crankingVolts().ifPresent(volts -> words.add(shown(volts)));
        made.crankingRpm().ifPresent(speed -> words.add(shown(speed) + " cranking"));
        made.station().ifPresent(air -> words.add("air " + shown(air)));
        made.gauge().ifPresent(gauge -> words.add("gauge " + gauge));
        made.gaugeStep().ifPresent(step -> words.add("steps of " + shown(step)));
        made.oil().ifPresent(oil -> words.add(shown(oil) + " of oil"));
        made.closed().ifPresent(shown -> words.add(shown(shown) + " with the hose closed"));
        made.who().ifPresent(who -> words.add("read by " + who));
        round(reading).ifPresent(words::add);
        if (!reading.note().isBlank()) {
            words.add(reading.note());
        }
        return String.join(", ", words);
    }

    private static Optional<String> round(Reading reading) {
        int round = reading instanceof Reading.Balance balance
                ? balance.round()
                : reading instanceof Reading.Compression compression
                        ? compression.round()
                        : reading instanceof Reading.Leakdown leakdown ? leakdown.round() : 1;
        return round > 1 ? Optional.of("round " + round) : Optional.empty();
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    static String shown(Quantity quantity) {
        return quantity.toString().replace(' ', Figures.NO_BREAK_SPACE).replace('-', Figures.MINUS);
    }
}
