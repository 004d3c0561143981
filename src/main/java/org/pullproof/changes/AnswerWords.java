package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.pullproof.units.Figures;

/** The answer over all changes: how many gains and losses, the largest of each, and what is open. */
final class AnswerWords {
    private final UnaryOperator<String> names;
    private final List<JudgedChange> told;

    /**
     * Speaks of the recorded steps, or of every comparison where none is recorded.
     *
     * @param names the name of a setup by its id
     */
    AnswerWords(UnaryOperator<String> names, List<JudgedChange> judged) {
        this.names = names;
        List<JudgedChange> steps =
                judged.stream().filter(JudgedChange::recorded).toList();
        this.told = steps.isEmpty() ? judged : steps;
    }

    String marked() {
        List<String> rest = new ArrayList<>();
        with(Call.GAIN).stream()
                .max(Comparator.comparingDouble(JudgedChange::differencePercent))
                .ifPresent(best -> rest.add(label(best) + " made " + figure(best)));
        with(Call.LOSS).stream()
                .min(Comparator.comparingDouble(JudgedChange::differencePercent))
                .ifPresent(worst -> rest.add(label(worst) + " made " + figure(worst)));
        addOpen(rest, Call.NO_CALL);
        addOpen(rest, Call.SPOILED);
        addOpen(rest, Call.SAME);
        return "**" + headline() + "** " + Wording.capital(String.join("; ", rest)) + ".";
    }

    private void addOpen(List<String> rest, Call call) {
        if (!with(call).isEmpty()) {
            rest.add(Wording.list(with(call).stream().map(this::label).toList()) + ": " + call.words());
        }
    }

    private List<JudgedChange> with(Call call) {
        return told.stream().filter(change -> change.call() == call).toList();
    }

    private String headline() {
        int gains = with(Call.GAIN).size();
        int losses = with(Call.LOSS).size();
        List<String> counts = new ArrayList<>();
        if (gains > 0) {
            counts.add(Wording.count(gains, "gain", "gains"));
        }
        if (losses > 0) {
            counts.add(Wording.count(losses, "loss", "losses"));
        }
        return counts.isEmpty() ? "No gain and no loss shown." : Wording.capital(String.join(", ", counts)) + ".";
    }

    private static String figure(JudgedChange change) {
        return "**" + Figures.signedPercent(change.differencePercent(), 1) + "** (" + Figures.signed(change.low(), 1)
                + " to " + Figures.signed(change.high(), 1) + ")";
    }

    /** What was done, where the words tell it from every other change; else the newer setup's name. */
    private String label(JudgedChange change) {
        return change.change()
                .map(Change::what)
                .filter(what -> !what.isBlank() && isAlone(what))
                .orElseGet(() -> names.apply(change.to()));
    }

    private boolean isAlone(String what) {
        return told.stream()
                        .flatMap(change -> change.change().stream())
                        .filter(change -> change.what().equals(what))
                        .count()
                == 1;
    }
}
