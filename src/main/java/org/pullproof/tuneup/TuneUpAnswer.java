package org.pullproof.tuneup;

import java.util.List;
import org.pullproof.tuneup.OffCarShelf.Standing;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Sentence;

/** Words the answer of the sheet Tune-up: how many steps are done, and whether the engine may be started. */
record TuneUpAnswer(List<StepState> steps, List<Standing> inTheWay, boolean open, boolean nothingOff) {
    private static final int MOST_NAMED = 3;
    private static final List<String> NUMBERS = List.of(
            "none",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
            "twenty");

    Sentence sentence() {
        return new Sentence(progress() + " " + start());
    }

    private String progress() {
        long done = steps.stream().filter(step -> step.state() == State.DONE).count();
        if (done == steps.size()) {
            return "All " + number(done) + " steps are done.";
        }
        String count = number(done);
        return Character.toUpperCase(count.charAt(0)) + count.substring(1) + " of " + number(steps.size())
                + (done > 1 ? " steps are done." : " steps is done.");
    }

    private String start() {
        if (!inTheWay.isEmpty()) {
            return "It **may not be started**: " + whatStands() + ".";
        }
        if (!open) {
            return "Nothing that must be back is off, but it **may not be started** before the start gate is ticked.";
        }
        return nothingOff
                ? "Nothing is off the car: the tune-up does not stand in the way of a start."
                : "Nothing that must be back is off: the tune-up does not stand in the way of a start.";
    }

    private String whatStands() {
        List<String> off = names(true);
        List<String> open = names(false);
        String stillOff = listed(off) + (off.size() > 1 ? " are still off" : " is still off");
        String notConfirmed = listed(open) + (open.size() > 1 ? " are not confirmed" : " is not confirmed");
        return off.isEmpty() ? notConfirmed : open.isEmpty() ? stillOff : stillOff + "; " + notConfirmed;
    }

    private List<String> names(boolean off) {
        return inTheWay.stream()
                .filter(standing -> standing.off() == off)
                .map(Standing::name)
                .toList();
    }

    private static String listed(List<String> names) {
        int named = names.size() > MOST_NAMED + 1 ? MOST_NAMED : names.size();
        int more = names.size() - named;
        String first = String.join(", ", names.subList(0, more > 0 ? named : Math.max(0, named - 1)));
        String last = more > 0 ? number(more) + " more" : named > 0 ? names.get(named - 1) : "";
        return first.isEmpty() ? last : first + " and " + last;
    }

    private static String number(long count) {
        return count < NUMBERS.size() ? NUMBERS.get((int) count) : String.valueOf(count);
    }
}
