package org.pullproof.ui.health;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.pullproof.advice.Appraisal;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.drawing.FiringStrip;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.About;
import org.pullproof.ui.health.ReadingRules.RefusedEntry;
import org.pullproof.ui.parts.CopiedRow;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Shown;

/** State and decisions of the sheet Health: tiles, the chosen cylinder with its readings, entry, whole engine. */
public final class HealthViewModel {
    private static final DateTimeFormatter TAKEN = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ROOT);

    private final SessionViewModel model;
    private final ReadingRules rules;
    private final HealthActs acts;
    private final ReadingEntry entry;
    private final ObjectProperty<ReadingsShown> shown = new SimpleObjectProperty<>(ReadingsShown.ALL);

    /**
     * One line of the list of readings.
     *
     * @param reading as kept
     * @param test its name
     * @param value what was read
     * @param how how it was made
     * @param taken when
     */
    public record Row(Reading reading, String test, String value, String how, String taken) {}

    public HealthViewModel(SessionViewModel model, ReadingRules rules, HealthActs acts) {
        this.model = model;
        this.rules = rules;
        this.acts = acts;
        this.entry = new ReadingEntry(this::engine, () -> model.look().figures().system());
        entry.testProperty().set(firstUnread());
        shown.set(anythingRead() ? ReadingsShown.ALL : ReadingsShown.of(firstUnread()));
        entry.testProperty().addListener((of, before, test) -> {
            if (shown.get() != ReadingsShown.ALL) {
                shown.set(ReadingsShown.of(test));
            }
        });
        shown.addListener((of, before, group) -> typeOf(group));
        model.appraisalProperty().addListener((of, before, after) -> stayOnTheEngine());
    }

    /** Another engine may have fewer cylinders. */
    private void stayOnTheEngine() {
        if (entry.cylinderProperty().get() > engine().cylinders()) {
            entry.cylinderProperty().set(1);
        }
    }

    SessionViewModel model() {
        return model;
    }

    public ReadingEntry entry() {
        return entry;
    }

    /** What stands below the tiles. */
    public ObjectProperty<ReadingsShown> shownProperty() {
        return shown;
    }

    /** The test being typed is one of the group shown. */
    private void typeOf(ReadingsShown group) {
        if (group != ReadingsShown.ALL && ReadingsShown.of(entry.testProperty().get()) != group) {
            entry.testProperty().set(group.firstTest());
        }
    }

    /** Shows the entry of the test being typed. */
    void showEntry() {
        shown.set(ReadingsShown.of(entry.testProperty().get()));
    }

    private Appraisal appraisal() {
        return model.appraisal();
    }

    public EngineProfile engine() {
        return model.session().profile();
    }

    /** The first of the three great tests that is not done: a run broken off goes on, but leak-down need not be read of all. */
    private TestKind firstUnread() {
        return Stream.of(TestKind.BALANCE, TestKind.COMPRESSION_DRY, TestKind.LEAKDOWN)
                .filter(test -> cylindersRead(test) < (test == TestKind.LEAKDOWN ? 1 : engine().cylinders()))
                .findFirst()
                .orElse(TestKind.COMPRESSION_DRY);
    }

    /** What the tile of a cylinder says. */
    public Tile tile(int cylinder) {
        return appraisal().health().cylinders().stream()
                .filter(findings -> findings.number() == cylinder)
                .findFirst()
                .map(findings -> Tile.of(findings, appraisal().figures()))
                .orElseGet(() -> Tile.notMeasured(cylinder));
    }

    /** Rows of cylinders as they lie on the plan, the upper one first, each from front to rear. */
    public List<List<Integer>> rows() {
        return EnginePlan.fromTop(engine()).stream()
                .map(bank -> bank.cylinders())
                .toList();
    }

    /** The words on the crank: firing order, units, and strokes where all are equal. */
    public String crankWords() {
        String unit = appraisal().figures().unit(Shown.COMPRESSION).symbol();
        List<Integer> strokes = appraisal().health().cylinders().stream()
                .map(CylinderFindings::strokes)
                .filter(OptionalInt::isPresent)
                .map(OptionalInt::getAsInt)
                .distinct()
                .toList();
        String counted = strokes.size() == 1 ? ", " + strokes.get(0) + " strokes" : "";
        return FiringStrip.words(engine().firing()) + " · drop rpm · pressures " + unit + counted;
    }

    /** What was read of the chosen cylinder in the group shown, the latest first. */
    public List<Row> readings() {
        List<Row> rows = model.session().readings().stream()
                .filter(this::concerns)
                .map(HealthViewModel::row)
                .collect(Collectors.toList());
        java.util.Collections.reverse(rows);
        return rows;
    }

    /** Whether a reading belongs to what is looked at: the whole engine, or the chosen cylinder. */
    private boolean concerns(Reading reading) {
        boolean allOfIt = reading.cylinder().isEmpty();
        boolean group = shown.get() == ReadingsShown.ALL || ReadingsShown.of(reading.test()) == shown.get();
        if (ofWholeEngine()) {
            return allOfIt;
        }
        boolean here = allOfIt
                ? reading.test() == TestKind.WORK
                : reading.cylinder().getAsInt() == entry.cylinderProperty().get();
        return here && group;
    }

    /** What a picture taken now would show: by the test the cylinder, its plug, the borescope in it, else the car. */
    About pictured() {
        int cylinder = entry.cylinderProperty().get();
        return switch (entry.testProperty().get()) {
            case PLUG -> About.plug(cylinder);
            case BORESCOPE -> About.borescope(cylinder);
            default -> ofWholeEngine() ? About.car() : About.cylinder(cylinder);
        };
    }

    /** Whether the test being typed belongs to the whole engine and to no cylinder. */
    boolean ofWholeEngine() {
        return !entry.testProperty().get().byCylinder();
    }

    private static Row row(Reading reading) {
        return new Row(
                reading,
                reading.test().words(),
                ReadingAsTyped.value(reading),
                ReadingAsTyped.how(reading),
                reading.time().format(TAKEN));
    }

    /** A group with how far it is: "Compression 6/8". */
    public String words(ReadingsShown group) {
        return switch (group) {
            case BALANCE, COMPRESSION, LEAKDOWN ->
                group.words() + " " + cylindersRead(group.firstTest()) + "/" + engine().cylinders();
            case ALL, FURTHER -> group.words();
            case WHOLE_ENGINE -> group.words() + " " + signsKnown() + "/" + signs();
        };
    }

    /** How many signs of the whole engine the strip asks for, the starter's humps counted. */
    long signs() {
        return wholeEngine().size() + 1L;
    }

    long signsKnown() {
        long humps = starterHumps().equals(Tile.NOT_MEASURED) ? 0 : 1;
        return wholeEngine().stream().filter(WholeEngine::known).count() + humps;
    }

    private long cylindersRead(TestKind test) {
        return model.session().readings().stream()
                .filter(reading -> reading.test() == test)
                .map(Reading::cylinder)
                .distinct()
                .count();
    }

    /** Whether anything was read of this engine. */
    public boolean anythingRead() {
        return !model.session().readings().isEmpty();
    }

    /** Whether anything was read of the test being typed. */
    public boolean testBegun() {
        return model.session().readings().stream()
                .anyMatch(reading -> reading.test() == entry.testProperty().get());
    }

    public List<WholeEngine> wholeEngine() {
        return WholeEngine.of(appraisal().health());
    }

    /** How many humps of the starter current were read: "6 of 8". */
    public String starterHumps() {
        long read = cylindersRead(TestKind.STARTER_CURRENT);
        return read == 0 ? Tile.NOT_MEASURED : read + " of " + engine().cylinders();
    }

    /**
     * Keeps what was typed and goes on to the next cylinder.
     *
     * @throws RefusedEntry naming the column and what would be right; nothing is lost then
     */
    public void keep() {
        Reading reading = rules.read(entry.cells());
        model.act(acts.record(reading));
        entry.next();
    }

    /**
     * Keeps readings copied from a spreadsheet, made as the fields of the test say; all of them or none.
     *
     * @throws IllegalArgumentException naming the row and what would be right
     */
    public void paste(String text) {
        PastedReadings pasted = PastedReadings.of(text);
        List<Reading> readings = new ArrayList<>();
        for (Map<String, String> cells : pasted.cells(entry.cylinderProperty().get())) {
            try {
                readings.add(rules.read(pasted.isWhole() ? cells : entry.cellsWith(cells)));
            } catch (IllegalArgumentException wrong) {
                throw new IllegalArgumentException(
                        "Row " + (readings.size() + 1) + ": " + wrong.getMessage() + " Nothing was taken in.", wrong);
            }
        }
        model.act(acts.recordAll(readings));
    }

    /**
     * Keeps a reading of the whole engine.
     *
     * @throws IllegalArgumentException with a sentence if it cannot be read
     */
    public void keepWhole(TestKind test, String typed) {
        model.act(acts.record(
                rules.read(Map.of("test", test.key(), "value", whole(test).read(EntryColumn.VALUE, typed)))));
    }

    /** Reads an entry of the strip as it will be recorded. */
    String readWhole(TestKind test, String typed) {
        return whole(test).read(EntryColumn.VALUE, typed);
    }

    private ReadingEntry whole(TestKind test) {
        ReadingEntry of =
                new ReadingEntry(this::engine, () -> model.look().figures().system());
        of.testProperty().set(test);
        return of;
    }

    public void remove(Reading reading) {
        model.act(acts.remove(reading));
    }

    /** The cylinders as a table, to be copied. */
    public String table() {
        String head = Stream.concat(
                        Stream.of("cylinder", "words"),
                        tile(1).values().stream().map(Tile.Value::name))
                .collect(Collectors.joining("\t"));
        return Stream.iterate(1, number -> number <= engine().cylinders(), number -> number + 1)
                .map(this::tile)
                .map(HealthViewModel::line)
                .collect(Collectors.joining("\n", head + "\n", "\n"));
    }

    private static String line(Tile tile) {
        return CopiedRow.of(Stream.concat(
                        Stream.of(String.valueOf(tile.number()), tile.words()),
                        tile.values().stream().map(Tile.Value::figure))
                .toArray(String[]::new));
    }
}
