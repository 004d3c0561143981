package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.pullproof.advice.Appraisal;
import org.pullproof.drawing.LineStyle;
import org.pullproof.drawing.PowerChart;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.StatedFinding;
import org.pullproof.engine.Setup;
import org.pullproof.session.Session;
import org.pullproof.ui.parts.CopiedRow;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** State and decisions of the sheet Dyno day: pull files, the pulls, the setup looked at. */
public final class DynoDayViewModel {
    private static final DateTimeFormatter CLOCK_TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final SessionViewModel model;
    private final DynoActs acts;
    private final AirViewModel air;
    private final TakeInViewModel takeIn;
    private final StringProperty chosen = new SimpleStringProperty("");

    /**
     * One pull of the list.
     *
     * @param pull with its figures
     * @param order place of its setup among the lines
     * @param name "base-3"
     * @param time of the clock
     * @param band band power in the unit of the sheet, or {@code –}
     * @param flag keyword of its first flag, or "out" if it is excluded, or empty
     */
    public record Row(PullFindings pull, int order, String name, String time, String band, String flag) {
        public boolean excluded() {
            return pull.excluded();
        }
    }

    /**
     * @param screen runs what touches the screen, when it is told away from it
     */
    public DynoDayViewModel(SessionViewModel model, DynoActs acts, AirViewModel air, Executor screen) {
        this.model = model;
        this.acts = acts;
        this.air = air;
        this.takeIn = new TakeInViewModel(model, acts, screen);
        followPresent(model.session());
        model.appraisalProperty().addListener((of, before, after) -> {
            if (!before.session().presentSetup().equals(after.session().presentSetup())) {
                followPresent(after.session());
            }
        });
    }

    /** Pulls are most likely made on what the engine is set to now. */
    private void followPresent(Session session) {
        takeIn.setupProperty().set(session.present().name());
        chosen.set(session.presentSetup());
    }

    SessionViewModel model() {
        return model;
    }

    private Appraisal appraisal() {
        return model.appraisal();
    }

    /** The air, as it is typed and as it was read last. */
    public AirViewModel air() {
        return air;
    }

    /** Name of the setup that files are taken in for. */
    public StringProperty setupProperty() {
        return takeIn.setupProperty();
    }

    /** Id of the setup drawn in blue. */
    public StringProperty chosenProperty() {
        return chosen;
    }

    /** Why files could not be taken in, or empty. */
    public ReadOnlyStringProperty problemProperty() {
        return takeIn.problemProperty();
    }

    public List<String> setupNames() {
        return model.session().setups().stream().map(Setup::name).toList();
    }

    public boolean anyPull() {
        return model.session().days().stream().anyMatch(day -> !day.pulls().isEmpty());
    }

    public List<Row> rows() {
        List<String> order = LineStyle.setups(appraisal().dyno());
        return appraisal().dyno().pulls().stream()
                .map(pull -> row(pull, order.indexOf(pull.pull().setup())))
                .toList();
    }

    private Row row(PullFindings pull, int order) {
        String flag = pull.excluded()
                ? "out"
                : pull.flags().stream()
                        .findFirst()
                        .map(DynoDayViewModel::keyword)
                        .orElse("");
        return new Row(pull, order, pull.name(), pull.pull().time().format(CLOCK_TIME), band(pull), flag);
    }

    private static String keyword(String flag) {
        return flag.split(":", 2)[0];
    }

    private String band(PullFindings pull) {
        OptionalDouble kilowatt = pull.bandCorrectedKw().isPresent() ? pull.bandCorrectedKw() : pull.bandMeasuredKw();
        if (kilowatt.isEmpty()) {
            return "–";
        }
        boolean measured = pull.bandCorrectedKw().isEmpty();
        return figures().bare(kilowatt.getAsDouble() * 1e3, Shown.POWER) + (measured ? " m" : "");
    }

    private Figures figures() {
        return appraisal().figures();
    }

    /** What the figures of the list are: "band hp, SAE J1349; m: as measured, no air". */
    public String listCaption() {
        boolean someMeasured = appraisal().dyno().pulls().stream()
                .anyMatch(pull -> pull.bandMeasuredKw().isPresent()
                        && pull.bandCorrectedKw().isEmpty());
        String unit = figures().unit(Shown.POWER).symbol();
        return "band " + unit + ", " + model.session().standard().words() + (someMeasured ? "; m: measured" : "");
    }

    /** What must be said of a pull: its flags, or why it is excluded. */
    public List<String> remarks(PullFindings pull) {
        return pull.pull()
                .excluded()
                .map(reason -> List.of(pull.name() + " is out: " + reason))
                .orElseGet(() -> pull.flags().stream()
                        .map(flag -> pull.name() + ", " + flag)
                        .toList());
    }

    /** What the chart shows. */
    public PowerChart.Content chart() {
        return new PowerChart.Content(
                appraisal().dyno(),
                model.session().setups(),
                Optional.of(chosen.get()),
                appraisal().changes().ribbonPercent(),
                model.session().standard(),
                figures());
    }

    /** Looks at the setup of a pull. */
    public void choose(PullFindings pull) {
        chosen.set(pull.pull().setup());
    }

    /** Takes in files dropped on the sheet or chosen; why not stands at {@link #problemProperty()}. */
    public void takeIn(List<Path> files) {
        takeIn.take(files);
    }

    /** What was left out of the files taken in last, one sentence each. */
    public List<String> leftOut() {
        return takeIn.leftOut();
    }

    /** Taking in pull files. */
    public TakeInViewModel takingIn() {
        return takeIn;
    }

    /**
     * Takes a pull out, with its reason.
     *
     * @throws IllegalArgumentException if no reason is given
     */
    public void exclude(PullFindings pull, String reason) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("Say why " + pull.name() + " does not count.");
        }
        model.act(acts.exclude(pull.pull(), reason.strip()));
    }

    public void include(PullFindings pull) {
        model.act(acts.include(pull.pull()));
    }

    /** What a figure of another sheet amounts to, if one was told. */
    public Optional<StatedFinding> stated() {
        return appraisal().dyno().stated();
    }

    /** Tells a figure of another sheet, in its words; empty forgets it. */
    public void tellStated(String words) {
        model.act(acts.tellStated(words));
    }

    /** The pulls as a table, to be copied. */
    public String table() {
        return rows().stream()
                .map(row -> CopiedRow.of(
                        row.name(),
                        row.pull().pull().time().toString(),
                        row.band(),
                        row.excluded()
                                ? row.pull().pull().excluded().orElse("")
                                : String.join("; ", row.pull().flags())))
                .collect(Collectors.joining("\n", "pull\ttime\t" + listCaption() + "\tflags\n", "\n"));
    }
}
