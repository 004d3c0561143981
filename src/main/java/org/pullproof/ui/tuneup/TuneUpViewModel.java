package org.pullproof.ui.tuneup;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.Ignition;
import org.pullproof.health.Conditions;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.tuneup.WireRecord;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** What the sheet Tune-up shows and does; knows no control. */
public final class TuneUpViewModel {
    static final String ALL = StepGraph.FULL;

    /** The part of the step graphs that wires are. */
    private static final String WIRES = "plug wires";

    private final SessionViewModel model;
    private final Toolbox tools;
    private final Clock clock;

    public TuneUpViewModel(SessionViewModel model, Toolbox tools, Clock clock) {
        this.model = model;
        this.tools = tools;
        this.clock = clock;
    }

    BenchViewModel bench() {
        return new BenchViewModel(model, tools, clock);
    }

    SessionViewModel model() {
        return model;
    }

    TuneUpFindings findings() {
        return model.appraisal().tuneUp();
    }

    Figures figures() {
        return model.look().figures();
    }

    /** Ticks a step, or takes its tick away. */
    void toggle(StepState step) {
        String id = step.step().id();
        LocalDateTime now = LocalDateTime.now(clock).withNano(0);
        model.act(
                step.state() == State.DONE
                        ? open -> tools.tickStep().untick(open, id)
                        : open -> tools.tickStep().tick(open, id, now));
    }

    /** A step as this car follows it, with all it needs whatever is planned. */
    Step whole(String id) {
        return tools.editSteps().of(model.session()).require(id);
    }

    /** Follows an edited step from now on; why not stands with {@code refused}. */
    void edit(Step step, Consumer<String> refused) {
        model.act(open -> tools.editSteps().change(open, step), refused);
    }

    void resetSteps(Consumer<String> refused) {
        model.act(open -> tools.editSteps().reset(open), refused);
    }

    void putBack(String part) {
        model.act(open -> tools.tickStep().putBack(open, part));
    }

    /** Leaves a part off on purpose; why not stands with {@code refused}. */
    void leaveOff(String part, String reason, Consumer<String> refused) {
        model.act(open -> tools.tickStep().leaveOff(open, part, reason), refused);
    }

    /** The plans to choose from, the whole tune-up first. */
    List<String> plans() {
        return Stream.concat(Stream.of(ALL), findings().plan().choices().keySet().stream())
                .toList();
    }

    /** The plan that is wanted now; empty where single steps were chosen. */
    Optional<String> plan() {
        Set<String> wanted = model.session().tuneUp().wanted();
        return wanted.isEmpty()
                ? Optional.of(ALL)
                : findings().plan().choices().entrySet().stream()
                        .filter(choice -> Set.copyOf(choice.getValue()).equals(wanted))
                        .map(Map.Entry::getKey)
                        .findFirst();
    }

    void want(String plan) {
        if (!plan().equals(Optional.of(plan))) {
            model.act(open -> tools.tickStep().want(open, List.of(plan)));
        }
    }

    /** "Left: about 3.5 h, nine of ten below 5.7 h (judgement)". */
    String timeLeft() {
        int left = findings().plan().minutesLeft();
        return left == 0
                ? "Nothing is left to do."
                : "Left: about " + hours(left) + ", nine of ten below "
                        + hours(findings().plan().minutesAtMost()) + " (judgement)";
    }

    private static String hours(int minutes) {
        return minutes < 90
                ? minutes + "" + Figures.NO_BREAK_SPACE + "min"
                : Figures.number(minutes / 60.0, 1) + Figures.NO_BREAK_SPACE + "h";
    }

    /** Whether this engine has plug wires. */
    boolean hasWires() {
        return model.session().profile().ignition() != Ignition.COIL_ON_PLUG;
    }

    /** Cylinders whose wire is off the car now. */
    Set<Integer> wiresOff() {
        return findings().offCar().stream()
                .filter(off -> off.part().equals(WIRES))
                .flatMap(off -> IntStream.rangeClosed(
                                1, model.session().profile().cylinders())
                        .boxed()
                        .filter(cylinder -> !off.fitted().orElse(Set.of()).contains(cylinder)))
                .collect(Collectors.toSet());
    }

    /** Whether this engine has a distributor cap. */
    boolean hasCap() {
        return model.session().profile().ignition() == Ignition.DISTRIBUTOR;
    }

    /** What is known of each cylinder's wire, 1 first; empty where nothing is. */
    List<WireRecord> wires() {
        return IntStream.rangeClosed(1, model.session().profile().cylinders())
                .mapToObj(this::wire)
                .toList();
    }

    private WireRecord wire(int cylinder) {
        return model.session().tuneUp().wires().stream()
                .filter(known -> known.cylinder() == cylinder)
                .findFirst()
                .orElseGet(() -> new WireRecord(cylinder, Optional.empty(), Optional.empty(), ""));
    }

    void record(WireRecord wire, Consumer<String> refused) {
        model.act(open -> tools.recordWires().record(open, wire), refused);
    }

    /** The cylinders around the cap as they were read: "1 8 4 3 6 5 7 2". */
    String cap() {
        return model.session().tuneUp().capOrder().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /**
     * Reads the cylinders around the cap.
     *
     * @throws IllegalArgumentException with a sentence if the text is not a list of numbers
     */
    static List<Integer> readCap(String text) {
        if (!text.strip().matches("\\d+([ ,;\\-]+\\d+)*")) {
            throw new IllegalArgumentException(
                    "Write the numbers around the cap in the direction the rotor turns, such as 1 3 4 2.");
        }
        return Stream.of(text.strip().split("[ ,;\\-]+")).map(Integer::valueOf).toList();
    }

    void recordCap(List<Integer> cylinders, Consumer<String> refused) {
        model.act(open -> tools.recordWires().cap(open, cylinders), refused);
    }

    /** What is known of each cylinder's plug, 1 first; empty where nothing is. */
    List<PlugFinding> plugs() {
        return IntStream.rangeClosed(1, model.session().profile().cylinders())
                .mapToObj(this::plug)
                .toList();
    }

    private PlugFinding plug(int cylinder) {
        return findings().plugs().stream()
                .filter(known -> known.plug().cylinder() == cylinder)
                .findFirst()
                .orElseGet(() -> new PlugFinding(
                        new PlugRecord(cylinder, Optional.empty(), Optional.empty(), Optional.empty()),
                        Optional.empty()));
    }

    /** The look of a plug as it was last read; a reading of its cylinder. */
    Optional<String> look(int cylinder) {
        return model.session().readings().stream()
                .flatMap(reading -> reading instanceof Reading.Sign sign ? Stream.of(sign) : Stream.empty())
                .filter(sign -> sign.test() == TestKind.PLUG && sign.cylinder().equals(OptionalInt.of(cylinder)))
                .reduce((before, last) -> last)
                .flatMap(Reading.Sign::word);
    }

    /** Keeps the look of a plug among the readings, where it is weighed. */
    void recordLook(int cylinder, String word) {
        Reading look = new Reading.Sign(
                TestKind.PLUG,
                OptionalInt.of(cylinder),
                Optional.empty(),
                Optional.of(word),
                Conditions.notRecorded(),
                LocalDateTime.now(clock).withNano(0),
                "");
        model.act(open -> tools.recordReading().record(open, look));
    }

    void record(PlugRecord plug, Consumer<String> refused) {
        model.act(open -> tools.recordPlug().record(open, plug), refused);
    }

    /** What the profile asks of the plugs. */
    String plugRange() {
        var plugs = model.session().profile().plugs();
        return "Gap " + figures().bare(plugs.gapFrom().si(), Shown.GAP) + " to "
                + figures().of(plugs.gapTo().si(), Shown.GAP) + ", torque "
                + figures().bare(plugs.torqueFrom().si(), Shown.TORQUE) + " to "
                + figures().of(plugs.torqueTo().si(), Shown.TORQUE) + "; " + plugs.seat()
                + ". The maker's manual comes first.";
    }
}
