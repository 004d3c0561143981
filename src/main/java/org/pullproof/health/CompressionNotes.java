package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.engine.Bank;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Layout;
import org.pullproof.health.compression.Banks;
import org.pullproof.health.compression.SeaLevel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** What is said beside the compression readings and decides nothing: the banks, the range to expect, the wet test. */
final class CompressionNotes {
    private final Evidence evidence;
    private final Figures figures;

    CompressionNotes(Evidence evidence) {
        this.evidence = evidence;
        this.figures = evidence.figures();
    }

    List<String> all() {
        List<String> notes = new ArrayList<>();
        banks().ifPresent(notes::add);
        expected().ifPresent(notes::add);
        wetInAFlatEngine().ifPresent(notes::add);
        return notes;
    }

    private Optional<String> banks() {
        List<Bank> banks = evidence.profile().banks();
        if (banks.size() != 2) {
            return Optional.empty();
        }
        return Banks.of(readings(banks.get(0)), readings(banks.get(1)))
                .map(found -> sentence(banks.get(0).name(), banks.get(1).name(), found));
    }

    private List<Double> readings(Bank bank) {
        Map<Integer, Double> pascal = evidence.comparison().pascal();
        return bank.cylinders().stream()
                .filter(pascal::containsKey)
                .map(pascal::get)
                .toList();
    }

    private String sentence(String first, String second, Banks found) {
        boolean firstHigher = found.difference() >= 0;
        String words = "Bank " + (firstHigher ? first : second) + " reads "
                + figures.of(Math.abs(found.difference()), Shown.COMPRESSION) + " ± "
                + figures.bare(found.half(), Shown.COMPRESSION) + " (90 %) more than bank "
                + (firstHigher ? second : first);
        return words
                + (found.apart()
                        ? ": more than the scatter inside the banks explains; look at what the cylinders of a bank"
                                + " share, the cam timing and the head."
                        : ", which the scatter inside the banks explains.");
    }

    /** A range, never a limit. */
    private Optional<String> expected() {
        OptionalDouble station = evidence.comparison().alike().values().stream()
                .flatMapToDouble(reading -> evidence.station(reading).stream())
                .average();
        if (evidence.comparison().alike().isEmpty()) {
            return Optional.empty();
        }
        Geometry geometry = evidence.profile().geometry();
        double air = station.orElse(SeaLevel.PRESSURE);
        String where = station.isPresent() ? "at " + figures.of(air, Shown.AIR_PRESSURE) : "at sea level";
        return Optional.of((geometry.assumed() ? "The assumed" : "This") + " geometry leads a tight cylinder to read "
                + figures.bare(SeaLevel.expected(geometry, air, SeaLevel.LEAST_EXPONENT), Shown.COMPRESSION) + " to "
                + figures.of(SeaLevel.expected(geometry, air, SeaLevel.GREATEST_EXPONENT), Shown.COMPRESSION) + " "
                + where + ": a range to expect, not a limit; heat, hose and cam make gauges read lower.");
    }

    private Optional<String> wetInAFlatEngine() {
        return evidence.profile().layout() == Layout.FLAT && !evidence.wet().isEmpty()
                ? Optional.of(
                        "The wet test is not decisive in a flat engine: the oil pools below and does not reach all"
                                + " of the rings; leak-down tells.")
                : Optional.empty();
    }
}
