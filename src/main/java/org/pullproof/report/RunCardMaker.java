package org.pullproof.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.report.RunCard.Line;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;

/** Lays out the run card of a tune-up as it stands. */
public final class RunCardMaker {
    private final Appraisal appraisal;

    public RunCardMaker(Appraisal appraisal) {
        this.appraisal = appraisal;
    }

    /**
     * @param last the caution that ends every list
     */
    public RunCard make(String last) {
        List<Line> lines = new ArrayList<>();
        Set<String> said = new LinkedHashSet<>();
        for (StepState step : found().steps()) {
            lines.add(line(step, said));
        }
        return new RunCard(
                appraisal.session().car().name() + ", "
                        + Wording.engine(appraisal.session().profile()),
                told(),
                lines,
                last);
    }

    private TuneUpFindings found() {
        return appraisal.tuneUp();
    }

    private List<String> told() {
        List<String> told = new ArrayList<>();
        told.add("Left to do: typically " + found().plan().minutesLeft() + " min, nine of ten below "
                + found().plan().minutesAtMost() + " min (judgement).");
        told.addAll(found().plan().because());
        if (!found().toBuy().items().isEmpty()) {
            told.add("To buy: "
                    + String.join(
                            ", ",
                            found().toBuy().items().stream()
                                    .map(item -> item.part())
                                    .toList())
                    + ".");
        }
        return told;
    }

    /** What is done needs no box. A caution stands where its act is first met: on every step it would be read on none. */
    private Line line(StepState state, Set<String> said) {
        Step step = state.step();
        if (state.state() == State.DONE) {
            return new Line(
                    step.id(), step.title(), true, false, step.minutes(), List.of(), List.of(), List.of(), List.of());
        }
        boolean gate = step.kind() == Step.Kind.START_GATE;
        return new Line(
                step.id(),
                step.title(),
                false,
                gate,
                step.minutes(),
                step.takesOff(),
                gate ? mustBeBack() : List.of(),
                help(step),
                step.cautions().stream().filter(said::add).toList());
    }

    /** Everything of the planned steps before the gate that must be back or confirmed, each once; and what was added. */
    private List<String> mustBeBack() {
        Set<String> back = new LinkedHashSet<>();
        found().steps().stream()
                .map(StepState::step)
                .filter(step -> step.kind() == Step.Kind.WORK)
                .forEach(step -> back.addAll(step.backBeforeStart()));
        found().offCar().stream().map(OffCar::part).forEach(back::add);
        back.removeAll(appraisal.session().tuneUp().leftOff().keySet());
        return List.copyOf(back);
    }

    private static List<String> help(Step step) {
        List<String> help = new ArrayList<>();
        if (!step.outfit().tools().isEmpty()) {
            help.add("Ready: " + String.join(", ", step.outfit().tools()) + ".");
        }
        step.outfit().figures().forEach(figure -> help.add(figure + "; the maker's manual comes first."));
        return help;
    }
}
