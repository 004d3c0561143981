package org.pullproof.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.drawing.CycleStrip;
import org.pullproof.drawing.Drawing;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;
import org.pullproof.engine.TopSigns;
import org.pullproof.health.AirPlace;
import org.pullproof.health.OddReading;
import org.pullproof.health.RunField;
import org.pullproof.health.TestOrder;
import org.pullproof.report.TallySheet.Cell;
import org.pullproof.report.TallySheet.Column;
import org.pullproof.report.TallySheet.Field;
import org.pullproof.report.TallySheet.Row;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;

/** Lays out the blank of a test for one car. */
public final class TallyMaker {
    private static final double STRIP_HEIGHT = 66;

    private final Session session;
    private final TallyKind test;
    private final TestOrder order;

    /**
     * @param session tells car and engine; no reading of it is printed
     */
    public TallyMaker(Session session, TallyKind test) {
        this.session = session;
        this.test = test;
        this.order = TestOrder.of(test.kind(), session.profile());
    }

    /**
     * @param cautions of the act
     */
    public TallySheet make(List<String> cautions) {
        return new TallySheet(
                test.key(),
                test.words(),
                session.car().name() + ", " + Wording.engine(session.profile()),
                inOrder(),
                cautions,
                fields(),
                columns(),
                order.cylinders().stream().map(this::row).toList(),
                picture(),
                notes());
    }

    private EngineProfile profile() {
        return session.profile();
    }

    private String inOrder() {
        String numbers = order.cylinders().stream().map(String::valueOf).collect(Collectors.joining("-"));
        return switch (test) {
            case BALANCE -> "Down in this order, " + numbers + ", then once more from the last back to the first.";
            case COMPRESSION -> "In this order: " + numbers + ". The same number of strokes at each.";
            case LEAKDOWN -> "In firing order, " + numbers + ", because the crank is turned from one to the next.";
        };
    }

    private List<Field> fields() {
        Stream<Field> told = RunField.of(test.kind()).stream()
                .map(field -> new Field(
                        field.words(),
                        field.choices().stream()
                                .map(words -> words.replace('-', ' '))
                                .toList(),
                        ""));
        return Stream.concat(Stream.of(Field.blank("Date")), told).toList();
    }

    private List<Column> columns() {
        return switch (test) {
            case BALANCE ->
                List.of(
                        new Column("Cyl", 8),
                        new Column("Drop, first round ↓", 26),
                        new Column("Drop, second round ↑", 26),
                        new Column("Note", 40));
            case COMPRESSION ->
                List.of(
                        new Column("Cyl", 8),
                        new Column("First stroke", 18),
                        new Column("Dry", 18),
                        new Column("Dry, again", 18),
                        new Column("Wet", 18),
                        new Column("Note", 20));
            case LEAKDOWN ->
                List.of(
                        new Column("Cyl", 8),
                        new Column("Turn the crank", 26),
                        new Column("Reading", 20),
                        new Column("Air heard", 26),
                        new Column("Note", 20));
        };
    }

    private Row row(int cylinder) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.number(cylinder));
        if (test == TallyKind.LEAKDOWN) {
            cells.add(Cell.printed(turnTo(cylinder)));
            cells.add(Cell.BLANK);
            cells.add(Cell.ticked(places()));
        }
        while (cells.size() < columns().size()) {
            cells.add(Cell.BLANK);
        }
        return new Row(cells);
    }

    private static List<String> places() {
        return Stream.concat(
                        Arrays.stream(AirPlace.values()).map(place -> String.valueOf(place.letter())), Stream.of("0"))
                .toList();
    }

    private String turnTo(int cylinder) {
        TdcTable table = TdcTable.of(profile());
        TdcTable.Row row = table.row(cylinder);
        String turn = row.crankDegrees() == 0
                ? "begin here: mark at the pointer"
                : "+" + table.turnFrom(table.before(cylinder)).crankDegrees() + "°, to damper " + row.damperDegrees()
                        + "°";
        return profile().rotor() == Rotor.NONE ? turn : turn + ", rotor at post " + cylinder;
    }

    private Optional<Drawing> picture() {
        int first = order.cylinders().get(0);
        return test == TallyKind.LEAKDOWN
                ? Optional.of(CycleStrip.of(profile(), first, Paper.CONTENT_WIDTH, STRIP_HEIGHT))
                : Optional.empty();
    }

    private List<String> notes() {
        return switch (test) {
            case BALANCE ->
                List.of(
                        "Hold 1,200 to 1,500 rpm with the idle control fixed or unplugged, fan and air conditioning off.");
            case COMPRESSION ->
                List.of(
                        "A reading far from the others: take it once more before you believe it. Oil only after every dry"
                                + " reading is written down.");
            case LEAKDOWN -> leakNotes();
        };
    }

    private List<String> leakNotes() {
        List<String> notes =
                new ArrayList<>(TopSigns.of(profile(), order.cylinders().get(0)));
        notes.add("Listen: "
                + Arrays.stream(AirPlace.values())
                        .map(place -> place.letter() + " " + place.listenAt() + ", " + place.path())
                        .collect(Collectors.joining("; "))
                + "; 0 nothing heard.");
        notes.add("A leak above " + Figures.percent(OddReading.CHECK_STROKE_PERCENT, 0)
                + ": check the stroke first, turn the crank once round.");
        return notes;
    }
}
