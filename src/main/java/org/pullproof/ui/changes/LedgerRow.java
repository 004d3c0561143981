package org.pullproof.ui.changes;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.pullproof.changes.Call;
import org.pullproof.changes.Change;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Unjudged;
import org.pullproof.ui.parts.CopiedRow;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * One line of the ledger.
 *
 * @param what what was done, in words
 * @param steps "base → timing 32°"
 * @param sides ids of both setups
 * @param change the recorded change, if it is one
 * @param judged its interval, if there are figures
 * @param call what may be said
 * @param sentence the call in words
 * @param beforeAfter band power before and after: "195.6 → 201.1 hp", or empty
 * @param cost what it cost, or empty where it is not known
 */
public record LedgerRow(
        String what,
        String steps,
        List<String> sides,
        Optional<Change> change,
        Optional<JudgedChange> judged,
        Call call,
        String sentence,
        String beforeAfter,
        String cost) {

    static LedgerRow of(JudgedChange judged, Figures figures) {
        return new LedgerRow(
                what(judged.change(), judged.recorded()),
                judged.name(),
                List.of(judged.from(), judged.to()),
                judged.change(),
                Optional.of(judged),
                judged.call(),
                judged.sentence(),
                figures.bare(judged.beforeKw() * 1e3, Shown.POWER) + " → "
                        + figures.of(judged.afterKw() * 1e3, Shown.POWER),
                cost(judged.change()));
    }

    static LedgerRow of(Unjudged unjudged) {
        return new LedgerRow(
                what(unjudged.change(), unjudged.recorded()),
                unjudged.name(),
                List.of(unjudged.from(), unjudged.to()),
                unjudged.change(),
                Optional.empty(),
                unjudged.call(),
                unjudged.sentence(),
                "",
                cost(unjudged.change()));
    }

    /** The first setup against the present one, measured directly. */
    static LedgerRow baselineToNow(JudgedChange judged, Figures figures) {
        LedgerRow row = of(judged, figures);
        return new LedgerRow(
                "Base to now, measured",
                row.steps,
                row.sides,
                Optional.empty(),
                row.judged,
                row.call,
                row.sentence,
                row.beforeAfter,
                "");
    }

    private static String what(Optional<Change> change, boolean recorded) {
        return change.map(Change::what).orElse(recorded ? "Not recorded what was done" : "Compared, not a step");
    }

    private static String cost(Optional<Change> change) {
        return change.flatMap(Change::cost).map(Figures::money).orElse("");
    }

    /** The line as cells of a table. */
    String cells() {
        return CopiedRow.of(
                what,
                steps,
                percent(JudgedChange::differencePercent),
                percent(JudgedChange::low),
                percent(JudgedChange::high),
                call.words(),
                beforeAfter,
                cost,
                sentence);
    }

    private String percent(ToDoubleFunction<JudgedChange> of) {
        return judged.map(one -> Figures.signed(of.applyAsDouble(one), 1)).orElse("");
    }
}
