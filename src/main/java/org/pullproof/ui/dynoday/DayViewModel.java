package org.pullproof.ui.dynoday;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.RunList.Run;
import org.pullproof.dyno.StartWindow;
import org.pullproof.ui.shell.SessionViewModel;

/** State and decisions of the page before and between pulls: the gate of today, how the car stands, what the next pull waits for. */
public final class DayViewModel {
    private final SessionViewModel model;
    private final DayActs acts;
    private final Clock clock;
    private final BooleanProperty shown = new SimpleBooleanProperty(false);

    public DayViewModel(SessionViewModel model, DayActs acts, Clock clock) {
        this.model = model;
        this.acts = acts;
        this.clock = clock;
    }

    SessionViewModel model() {
        return model;
    }

    /** Whether the page stands in the place of the pulls. */
    public BooleanProperty shownProperty() {
        return shown;
    }

    private LocalDateTime now() {
        return LocalDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    private Optional<DynoDay> day() {
        return model.session().days().stream()
                .filter(day -> day.date().equals(today()))
                .findFirst();
    }

    /** The gate of today; nothing of an earlier day counts. */
    public LoadGate gate() {
        return model.appraisal().gate().on(today());
    }

    /** Ticks a point of the gate, or takes tick and reason back. */
    public void tick(String point, boolean right, Consumer<String> refused) {
        model.act(right ? acts.tick(gate(), point, now()) : acts.undo(gate(), point, today()), refused);
    }

    /** Passes a point with a reason. */
    public void pass(String point, String reason, Consumer<String> refused) {
        model.act(acts.pass(gate(), point, reason, today()), refused);
    }

    /** Notes a pull broken off. */
    public void abort(String cause) {
        model.act(acts.abort(cause, now()));
    }

    public Optional<String> told(DayFact fact) {
        return day().flatMap(day -> Optional.ofNullable(day.facts().get(fact)));
    }

    /** Tells how the car stands today; blank forgets it. */
    public void tell(DayFact fact, String words) {
        model.act(acts.tell(fact, words, today()));
    }

    /** The plan of today as it is typed: "base, timing 32°, base × 3". */
    public String plan() {
        return day().flatMap(DynoDay::plan)
                .map(plan -> String.join(", ", plan.visits()) + " × " + plan.pulls())
                .orElse("");
    }

    /**
     * Reads a plan as typed: setups in their order with commas between, and the pulls at each visit after a cross.
     *
     * @throws IllegalArgumentException with a sentence if it is none
     */
    public static DayPlan readPlan(String typed) {
        String[] parts = typed.split("[×*]", -1);
        if (parts.length > 2) {
            throw new IllegalArgumentException("One cross stands in a plan: base, timing 32, base × 3.");
        }
        List<String> visits =
                Arrays.stream(parts[0].split(",", -1)).map(String::strip).toList();
        return new DayPlan(visits, parts.length == 1 ? 3 : count(parts[1].strip()));
    }

    private static int count(String typed) {
        if (!typed.matches("\\d{1,2}")) {
            throw new IllegalArgumentException("After the cross stands how many pulls a visit has, such as 3.");
        }
        return Integer.parseInt(typed);
    }

    /** Keeps a plan for today. */
    public void keepPlan(DayPlan plan) {
        model.act(acts.plan(Optional.of(plan), today()));
    }

    public void forgetPlan() {
        model.act(acts.plan(Optional.empty(), today()));
    }

    /** The pulls of today, driven and to come. */
    public List<Run> runs() {
        return day().isPresent() ? model.appraisal().day().runs().runs() : List.of();
    }

    private StartWindow start() {
        return model.appraisal().day().start();
    }

    /** What the next pull waits for, one sentence each. */
    public List<String> due() {
        return start().due(model.appraisal().figures());
    }

    /** Whether the next pull may begin, in a few words for the top of the sheet. */
    public String standing() {
        if (!gate().isOpen()) {
            int open = gate().inTheWay().size();
            return "Gate before the first pull: closed, " + open + (open == 1 ? " point open" : " points open");
        }
        Duration wait = start().wait(now());
        String next = runs().stream()
                .filter(run -> run.made().isEmpty())
                .findFirst()
                .map(run -> "; next: " + run.name())
                .orElse("");
        return "Gate before the first pull: open" + next
                + (wait.isZero() ? "" : "; wait " + wait.toSeconds() + "\u00a0s");
    }
}
