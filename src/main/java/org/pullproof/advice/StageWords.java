package org.pullproof.advice;

import java.util.List;
import org.pullproof.advice.StageProgress.Progress;
import org.pullproof.changes.Call;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Figures;
import org.pullproof.worth.WorthFindings;

/** Says how far each stage is, in three words. */
final class StageWords {
    private StageWords() {}

    static List<StageProgress> of(Situation now, WorthFindings worth) {
        return List.of(
                car(now),
                health(now.session(), now.health()),
                tuneUp(now.tuneUp()),
                dynoDay(now),
                changes(now),
                worth(worth));
    }

    private static StageProgress car(Situation now) {
        boolean told = now.car().access().isPresent() && now.car().runs().isPresent();
        return new StageProgress(Stage.CAR, told ? Progress.DONE : Progress.UNDER_WAY, CarAnswer.words(now.car()));
    }

    private static StageProgress health(Session session, HealthFindings health) {
        if (session.readings().isEmpty()) {
            return new StageProgress(Stage.HEALTH, Progress.NOT_BEGUN, "nothing measured");
        }
        boolean settled = health.verdict() != Verdict.NOT_SETTLED;
        return new StageProgress(Stage.HEALTH, settled ? Progress.DONE : Progress.UNDER_WAY, verdict(health));
    }

    private static String verdict(HealthFindings health) {
        List<String> suspects = health.cylinders().stream()
                .filter(cylinder -> cylinder.state() == State.LOW || cylinder.state() == State.IN_DOUBT)
                .map(CylinderFindings::number)
                .map(String::valueOf)
                .toList();
        return switch (suspects.size()) {
            case 0 -> health.verdict().words().toLowerCase(java.util.Locale.ROOT);
            case 1 -> "cylinder " + suspects.get(0) + " in doubt";
            default -> suspects.size() + " cylinders in doubt";
        };
    }

    private static StageProgress tuneUp(TuneUpFindings tuneUp) {
        long done = tuneUp.doneCount();
        int all = tuneUp.steps().size();
        if (done == 0) {
            return new StageProgress(Stage.TUNE_UP, Progress.NOT_BEGUN, all + " steps ready");
        }
        return new StageProgress(
                Stage.TUNE_UP, done == all ? Progress.DONE : Progress.UNDER_WAY, done + " of " + all + " steps");
    }

    private static StageProgress dynoDay(Situation now) {
        int pulls = now.dyno().pulls().size();
        int setups = now.dyno().setups().size();
        return pulls == 0
                ? new StageProgress(Stage.DYNO_DAY, Progress.NOT_BEGUN, "no pull yet")
                : new StageProgress(
                        Stage.DYNO_DAY, Progress.UNDER_WAY, counted(pulls, "pull") + ", " + counted(setups, "setup"));
    }

    private static StageProgress changes(Situation now) {
        ChangeLedger ledger = now.changes();
        long judged = ledger.changes().stream().filter(JudgedChange::recorded).count();
        if (judged == 0) {
            return new StageProgress(Stage.CHANGES, Progress.NOT_BEGUN, "no change yet");
        }
        long calls = ledger.changes().stream()
                .filter(JudgedChange::recorded)
                .filter(change -> change.call() != Call.NO_CALL && change.call() != Call.SPOILED)
                .count();
        return new StageProgress(
                Stage.CHANGES,
                calls == judged ? Progress.DONE : Progress.UNDER_WAY,
                counted(judged, "change") + ", " + counted(calls, "call"));
    }

    private static StageProgress worth(WorthFindings worth) {
        boolean begun = worth.spent().value() > 0;
        Progress progress = worth.tooEarly() ? Progress.NOT_BEGUN : Progress.UNDER_WAY;
        String words = begun ? "spent: " + Figures.money(worth.spent()) : "ready to weigh";
        return new StageProgress(Stage.WORTH_IT, progress, worth.tooEarly() ? "too early" : words);
    }

    private static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
