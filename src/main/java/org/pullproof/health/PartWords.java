package org.pullproof.health;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pullproof.health.faults.Part;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** One reading of a cylinder in a few words, beside what it is held against. */
final class PartWords {
    private final Evidence evidence;

    PartWords(Evidence evidence) {
        this.evidence = evidence;
    }

    String of(int cylinder, Part part) {
        return switch (part) {
            case DRY ->
                dry(cylinder)
                                .map(Reading.Compression::gauge)
                                .map(this::pressure)
                                .orElse("") + " dry" + besideOthers(cylinder);
            case FIRST ->
                "first stroke "
                        + dry(cylinder)
                                .flatMap(Reading.Compression::first)
                                .map(this::pressure)
                                .orElse("");
            case WET ->
                Optional.ofNullable(evidence.wet().get(cylinder))
                                .map(Reading.Compression::gauge)
                                .map(this::pressure)
                                .orElse("")
                        + " wet";
            case LEAKDOWN ->
                "leak-down "
                        + Optional.ofNullable(evidence.leaks().get(cylinder))
                                .map(LeakReading::words)
                                .orElse("");
            case AIR -> air(cylinder);
            case BALANCE -> balance(cylinder);
            case PLUG, LASH, COIL_SWAP, BORESCOPE, RUNNING -> sign(cylinder, part);
        };
    }

    private Optional<Reading.Compression> dry(int cylinder) {
        return Optional.ofNullable(evidence.dry().get(cylinder));
    }

    private String pressure(Quantity read) {
        return ReadingWords.asRead(read, Shown.COMPRESSION, evidence.figures());
    }

    private String besideOthers(int cylinder) {
        double[] others = evidence.weighedDry().entrySet().stream()
                .filter(entry -> entry.getKey() != cylinder)
                .mapToDouble(entry -> entry.getValue().gauge().si())
                .toArray();
        return others.length == 0 ? "" : " beside " + evidence.figures().of(Median.of(others), Shown.COMPRESSION);
    }

    private String air(int cylinder) {
        Set<AirPlace> heard = Optional.ofNullable(evidence.leakReadings().get(cylinder))
                .flatMap(Reading.Leakdown::air)
                .orElse(Set.of());
        return heard.isEmpty() ? "no air heard" : AirWords.of(heard);
    }

    private String balance(int cylinder) {
        OptionalDouble others = evidence.drops().medianOfOthers(cylinder);
        return "drop " + Figures.number(evidence.drops().means().getOrDefault(cylinder, 0.0), 0)
                + (others.isPresent() ? " of about " + evidence.figures().of(others.getAsDouble(), Shown.SPEED) : "");
    }

    private String sign(int cylinder, Part part) {
        return evidence.sign(cylinder, part.test())
                .map(sign -> ReadingWords.of(sign, evidence.figures()))
                .map(words -> words.replace('-', ' ').toLowerCase(Locale.ROOT))
                .orElse(part.words());
    }
}
