package org.pullproof.ui.health;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Reading;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** What was read, as it stands in the one field and on a tile: the figure in the unit beside the field, or the word. */
final class FenderFigures {
    private FenderFigures() {}

    /**
     * @param unit beside the field; a figure typed in it keeps its digits
     */
    static String of(Reading reading, Optional<Unit> unit) {
        if (reading instanceof Reading.Balance balance) {
            return bare(balance.drop(), unit);
        }
        if (reading instanceof Reading.Compression compression) {
            return bare(compression.gauge(), unit);
        }
        if (reading instanceof Reading.Leakdown leakdown) {
            return leak(leakdown.value(), unit);
        }
        if (reading instanceof Reading.Sign sign) {
            return sign.figure()
                    .map(figure -> bare(figure, unit))
                    .or(sign::word)
                    .orElse("");
        }
        return ((Reading.Work) reading).what();
    }

    private static String leak(Reading.Leak leak, Optional<Unit> unit) {
        if (leak instanceof Reading.Leak.Percentage percentage) {
            return bare(percentage.share(), unit);
        }
        return leak instanceof Reading.Leak.Behind behind
                ? bare(behind.pressure(), unit)
                : ((Reading.Leak.Zone) leak).zone().key();
    }

    private static String bare(Quantity quantity, Optional<Unit> unit) {
        Optional<Unit> other = unit.filter(beside -> beside != quantity.unit());
        if (other.isEmpty()) {
            return quantity.figure().toPlainString();
        }
        return other.filter(beside -> beside.dimension() == quantity.dimension())
                .map(beside -> String.valueOf(Math.round(quantity.in(beside))))
                .orElseGet(() -> ReadingAsTyped.shown(quantity));
    }

    /** The letters of the places where air was heard, 0 for nowhere. */
    static String letters(Set<AirPlace> places) {
        return places.isEmpty()
                ? "0"
                : places.stream()
                        .sorted()
                        .map(place -> String.valueOf(place.letter()))
                        .collect(Collectors.joining(" "));
    }
}
