package org.pullproof.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.GatePoint;
import org.pullproof.car.Fact;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.RunList.Run;
import org.pullproof.report.TallySheet.Cell;
import org.pullproof.report.TallySheet.Column;
import org.pullproof.report.TallySheet.Field;
import org.pullproof.report.TallySheet.Row;

/** Lays out the run card of a dyno day: the gate to tick, how the car stands, a row a pull, and when to break one off. */
public final class DayCardMaker {
    /** The key of the card on the command line. */
    public static final String KEY = "dyno";

    private static final int ROWS = 12;

    private final Appraisal appraisal;

    public DayCardMaker(Appraisal appraisal) {
        this.appraisal = appraisal;
    }

    /**
     * @param cautions of a pull
     */
    public TallySheet make(List<String> cautions) {
        return new TallySheet(
                KEY,
                "Dyno day",
                appraisal.session().car().name() + ", "
                        + Wording.engine(appraisal.session().profile()),
                order(),
                cautions,
                fields(),
                columns(),
                rows(),
                Optional.empty(),
                notes());
    }

    private String order() {
        String warm = "Two pulls to warm up, one at part load, that count for nothing. ";
        return warm
                + (toCome().isEmpty()
                        ? "Then three at base, three on each change, and back to base after each; end at base."
                        : "Then the pulls below, all of them, and only then read.");
    }

    /** Blank to write on, but for what is known of the car already: an operator need not ask again. */
    private List<Field> fields() {
        Stream<Field> first = Stream.of(
                Field.blank("Date, driver"),
                Field.blank("Air, time"),
                known("Engine speeds", new ToldFacts(appraisal.session().car()).said(Fact.BAND)),
                known("Setup now", Optional.of(appraisal.session().present().name())));
        return Stream.concat(first, Arrays.stream(DayFact.values()).map(this::field))
                .toList();
    }

    private Field field(DayFact fact) {
        return known(
                fact.words(),
                switch (fact) {
                    case GEAR -> appraisal.session().car().told(Fact.GEAR);
                    case FUEL -> appraisal.session().car().told(Fact.FUEL);
                    default -> Optional.empty();
                });
    }

    private static Field known(String name, Optional<String> told) {
        return new Field(name, List.of(), told.orElse(""));
    }

    private static List<Column> columns() {
        return List.of(
                new Column("Pull", 17),
                new Column("Time", 9),
                new Column("Coolant", 10),
                new Column("Oil", 9),
                new Column("Intake", 9),
                new Column("Volts", 9),
                new Column("File", 15),
                new Column("Remark, abort", 22));
    }

    private List<Run> toCome() {
        return appraisal.day().runs().runs().stream()
                .filter(run -> run.made().isEmpty())
                .limit(ROWS)
                .toList();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        toCome().forEach(run -> rows.add(row(Cell.printed(run.name()))));
        while (rows.size() < ROWS) {
            rows.add(row(Cell.BLANK));
        }
        return rows;
    }

    private static Row row(Cell first) {
        List<Cell> cells = new ArrayList<>(List.of(first));
        while (cells.size() < columns().size()) {
            cells.add(Cell.BLANK);
        }
        return new Row(cells);
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Still to pass at the gate before the first pull: " + gate());
        notes.add("Start of each pull: "
                + String.join(" ", appraisal.day().start().due(appraisal.figures())));
        notes.add("Break off at: " + String.join("; ", appraisal.gate().rules().abort()) + ". "
                + appraisal.gate().rules().abortAct());
        return notes;
    }

    private String gate() {
        List<GatePoint> open = appraisal.gate().inTheWay();
        return open.isEmpty()
                ? "all passed."
                : String.join(
                                ", ",
                                open.stream()
                                        .map(point -> point.key().replace('-', ' '))
                                        .toList()) + ".";
    }
}
