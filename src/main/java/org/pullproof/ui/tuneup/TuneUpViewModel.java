package org.pullproof.ui.tuneup;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.pullproof.app.RecordPlug;
import org.pullproof.app.TickStep;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** What the sheet Tune-up shows and does; knows no control. */
public final class TuneUpViewModel {
    private final SessionViewModel model;
    private final TickStep tickStep;
    private final RecordPlug recordPlug;
    private final Clock clock;

    public TuneUpViewModel(SessionViewModel model, TickStep tickStep, RecordPlug recordPlug, Clock clock) {
        this.model = model;
        this.tickStep = tickStep;
        this.recordPlug = recordPlug;
        this.clock = clock;
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
                step.state() == State.DONE ? open -> tickStep.untick(open, id) : open -> tickStep.tick(open, id, now));
    }

    void putBack(String part) {
        model.act(open -> tickStep.putBack(open, part));
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

    void record(PlugRecord plug, Consumer<String> refused) {
        model.act(open -> recordPlug.record(open, plug), refused);
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

    /** The word at the end of a step's line. */
    static String word(StepState step) {
        return step.waitsFor().isEmpty() ? step.state().key() : "waits for " + String.join(", ", step.waitsFor());
    }
}
