package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.units.Unit;

/** A sweep in words: the best level, the one to use, the next one to try. */
final class SweepWords {
    private static final String MORE_ADVANCE =
            "That is more advance than was tried: a degree or two at a time, on fuel good enough for it, listening for knock; lift at the"
                    + " first sign and go back.";

    private final SweepGroup group;
    private final SweepAdvice advice;

    SweepWords(SweepGroup group, SweepAdvice advice) {
        this.group = group;
        this.advice = advice;
    }

    String sentence() {
        List<String> parts = new ArrayList<>();
        parts.add(best());
        parts.add(recommended());
        advice.knock()
                .ifPresent(level -> parts.add(figure(level, places())
                        + (group.isTiming() ? " knocked: nothing from there up." : " knocked: not offered.")));
        parts.add(next());
        parts.removeIf(String::isEmpty);
        return String.join(" ", parts);
    }

    private String best() {
        String name = Wording.capital(group.factor());
        Optional<SweepFit.Interval> interval = advice.interval();
        if (interval.isPresent()) {
            return name + ": best near " + figure(advice.best(), places() + 1) + ", 90 % between "
                    + Figures.number(interval.get().low(), places() + 1) + " and "
                    + figure(interval.get().high(), places() + 1) + ".";
        }
        return advice.peaksInside()
                ? name + ": no peak proved yet; the curve is highest near " + figure(advice.best(), places() + 1) + "."
                : name + ": no peak proved yet; the curve is highest at the end tested, "
                        + figure(advice.best(), places()) + ".";
    }

    private String recommended() {
        if (advice.recommended().isEmpty()) {
            return "Every level knocked: none can be recommended.";
        }
        String level = figure(advice.recommended().getAsDouble(), places());
        return group.isTiming()
                ? "Use " + level + ": the least advance within half a percent of the top."
                : "Use " + level + ", the tested level nearest to it.";
    }

    private String next() {
        if (advice.next().isEmpty()) {
            return "No further level is worth a try.";
        }
        double level = advice.next().getAsDouble();
        String next = "Next worth two pulls: " + figure(level, places()) + ".";
        return group.isTiming() && advice.isBeyondTried(level) ? next + " " + MORE_ADVANCE : next;
    }

    private int places() {
        return (int) Math.max(0, Math.rint(-Math.log10(advice.resolution())));
    }

    private String figure(double value, int places) {
        String number = Figures.number(value, places);
        return group.unit() == Unit.ONE
                ? number
                : group.unit() == Unit.DEGREE
                        ? number + "°"
                        : number + Figures.NO_BREAK_SPACE + group.unit().symbol();
    }
}
