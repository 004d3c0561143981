package org.pullproof.ui.dynoday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.AirPart;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Lookalike;
import org.pullproof.weather.Standard;
import org.pullproof.weather.StandardNote;
import org.pullproof.weather.TypedAir;

/**
 * What the air being typed would do to the figures, live beside the fields.
 *
 * @param measured the power that the rows correct, in words
 * @param head over the rows: "read as" or "standard"
 * @param unit of the corrected figures
 * @param rows a pressure taken either way, else every standard
 * @param moves what each reading leaves open of the session's factor; empty until the air stands
 * @param remarks what lies outside the standard's range, and what must be known of it
 */
record AirEffect(String measured, String head, String unit, List<Row> rows, List<Move> moves, List<String> remarks) {
    /** What is less than this reads as 0.0000. */
    private static final double SHOWN = 0.00005;

    /**
     * @param read as what, or by which standard
     * @param factor in words
     * @param corrected the measured power times the factor, in words
     * @param struck whether this way of reading is refused
     * @param chosen whether the session stands on it
     */
    record Row(String read, String factor, String corrected, boolean struck, boolean chosen) {}

    /**
     * @param part which reading
     * @param halfWidth in words: "± 0.0006"
     */
    record Move(String part, String halfWidth) {}

    /**
     * Computes the panel.
     *
     * @param watt power that a pull measured
     * @param charged whether the engine is charged
     */
    static AirEffect of(
            AirEntry air, Correction correction, Standard standard, double watt, boolean charged, Figures figures) {
        return new Maker(correction, standard, watt, figures).made(air, charged);
    }

    private record Maker(Correction correction, Standard standard, double watt, Figures figures) {

        AirEffect made(AirEntry entry, boolean charged) {
            Optional<Lookalike> likeness = entry.lookalike();
            List<Row> rows = likeness.map(either -> bothWays(entry, either))
                    .orElseGet(() -> entry.air().map(this::everyStandard).orElse(List.of()));
            Optional<TypedAir> counted =
                    entry.air().or(() -> likeness.flatMap(either -> entry.with(either.asSetting())));
            Optional<Factor> factor = counted.map(air -> correction.factor(standard, air));
            return new AirEffect(
                    figures.of(watt, Shown.POWER),
                    likeness.isPresent() ? "read as" : "standard",
                    figures.unit(Shown.POWER).symbol(),
                    rows,
                    factor.map(Maker::moves).orElse(List.of()),
                    remarks(factor, charged));
        }

        private List<Row> bothWays(AirEntry entry, Lookalike likeness) {
            Barometer asStation = new Barometer.Station(likeness.typed());
            return Stream.of(
                            entry.with(asStation)
                                    .map(air -> row("station " + likeness.typed(), air, likeness.refused())),
                            entry.with(likeness.asSetting())
                                    .map(air -> row("altimeter " + likeness.typed(), air, false)))
                    .flatMap(Optional::stream)
                    .toList();
        }

        private Row row(String read, TypedAir air, boolean struck) {
            return row(read, correction.factor(standard, air), struck, !struck);
        }

        private List<Row> everyStandard(TypedAir air) {
            return Stream.of(Standard.values())
                    .filter(each -> each != Standard.NONE)
                    .map(each -> row(each.words(), correction.factor(each, air), false, each == standard))
                    .toList();
        }

        private Row row(String read, Factor factor, boolean struck, boolean chosen) {
            return new Row(
                    read,
                    Figures.number(factor.value(), 3),
                    figures.bare(watt * factor.value(), Shown.POWER),
                    struck,
                    chosen);
        }

        private static List<Move> moves(Factor factor) {
            return factor.parts().stream()
                    .filter(part -> part.halfWidth() >= SHOWN)
                    .map(Maker::move)
                    .toList();
        }

        private static Move move(AirPart.Width width) {
            return new Move(width.part().words(), "±" + Figures.NO_BREAK_SPACE + Figures.number(width.halfWidth(), 4));
        }

        private List<String> remarks(Optional<Factor> factor, boolean charged) {
            StandardNote note = StandardNote.of(standard);
            List<String> remarks = new ArrayList<>();
            factor.ifPresent(found -> found.outside().forEach(sentence -> remarks.add("Outside: " + sentence)));
            if (charged) {
                remarks.add(StandardNote.CHARGED);
            }
            remarks.add(standard.words() + ": " + note.sentence() + " Reference air " + note.reference() + ".");
            remarks.add(StandardNote.AT_THE_WHEELS);
            return List.copyOf(remarks);
        }
    }
}
