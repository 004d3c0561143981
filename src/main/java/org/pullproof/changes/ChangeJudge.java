package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;

/**
 * Says of every change whether it made power: gain, loss, same, no call yet or spoiled, with a 90 % interval. The method and
 * its sources: docs/methods/changes.md.
 */
public final class ChangeJudge {
    /**
     * @param setups every setup in the order they were made
     * @param changes the steps between them
     * @param presentSetup id of the setup the engine is in now
     * @param pulls every pull in order of time
     * @param smallestDifferencePercent the smallest difference worth paying for, percent, greater than 0
     * @param figures how sentences write figures
     */
    public ChangeLedger judge(
            List<Setup> setups,
            List<Change> changes,
            String presentSetup,
            List<PullFindings> pulls,
            double smallestDifferencePercent,
            Figures figures) {
        Basis basis = Basis.of(pulls);
        Prior prior = Calibration.of(pulls, basis, Prior.OF_THIS_PROJECT);
        RotatingParts rotating = new RotatingParts(setups, changes);
        Doubts doubts = Doubts.of(PullSequence.of(pulls, pull -> true, basis), rotating, id -> name(setups, id), prior);
        List<PullFindings> flagged = pulls.stream().map(doubts::flagged).toList();
        PullSequence counted = PullSequence.of(flagged, pull -> true, basis);
        ChangeWords words = new ChangeWords(setups, counted, smallestDifferencePercent, figures);
        List<Comparison> comparisons = Comparison.of(setups, changes, appeared(pulls));
        if (counted.entries().isEmpty()) {
            return withoutFigures(comparisons, pulls, words);
        }
        Fits fits = Fits.of(flagged, counted, doubts, rotating, prior);
        Tried tried = new Tried(fits, comparisons, smallestDifferencePercent, words);
        List<JudgedChange> judged = tried.judged();
        return new ChangeLedger(
                words.answer(judged),
                OptionalDouble.of(fits.all().scatter()),
                OptionalDouble.of(meanDrift(fits)),
                fits.all().degrees(),
                basis == Basis.MEASURED,
                judged,
                unjudged(comparisons, pulls, counted, words),
                baseline(counted, presentSetup).map(tried::whole),
                residuals(fits),
                new Sweeps(counted, prior).among(setups, changes),
                againstPresent(fits, tried, presentSetup),
                doubts.flags());
    }

    private static String name(List<Setup> setups, String id) {
        return setups.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }

    private static List<String> appeared(List<PullFindings> pulls) {
        return pulls.stream().map(pull -> pull.pull().setup()).distinct().toList();
    }

    private static ChangeLedger withoutFigures(
            List<Comparison> comparisons, List<PullFindings> pulls, ChangeWords words) {
        PullSequence none = PullSequence.of(List.of(), pull -> true, Basis.CORRECTED);
        return new ChangeLedger(
                words.answer(List.of()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                false,
                List.of(),
                unjudged(comparisons, pulls, none, words),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
    }

    private static List<Unjudged> unjudged(
            List<Comparison> comparisons, List<PullFindings> pulls, PullSequence counted, ChangeWords words) {
        List<Unjudged> without = new ArrayList<>();
        for (Comparison pair : comparisons) {
            if (!counted.has(pair.from()) || !counted.has(pair.to())) {
                String empty = counted.has(pair.from()) ? pair.to() : pair.from();
                without.add(unjudged(pair, empty, pulls, words));
            }
        }
        return without;
    }

    private static Unjudged unjudged(Comparison pair, String empty, List<PullFindings> pulls, ChangeWords words) {
        List<PullFindings> spoiled = pulls.stream()
                .filter(pull -> pull.pull().setup().equals(empty) && !pull.excluded())
                .filter(Flagged::tellsWhyNotCompared)
                .toList();
        return new Unjudged(
                words.name(pair),
                pair.from(),
                pair.to(),
                pair.recorded(),
                pair.change(),
                spoiled.isEmpty() ? Call.NO_CALL : Call.SPOILED,
                spoiled.isEmpty() ? words.noPull(empty) : words.noneCounts(empty, spoiled));
    }

    /** The first setup with pulls against the present one. */
    private static Optional<Comparison> baseline(PullSequence counted, String present) {
        String first = counted.settings().get(0);
        return counted.has(present) && !present.equals(first)
                ? Optional.of(new Comparison(first, present, Optional.empty()))
                : Optional.empty();
    }

    private static List<ChangeLedger.AgainstPresent> againstPresent(Fits fits, Tried tried, String present) {
        return fits.counted().settings().stream()
                .distinct()
                .filter(setup -> fits.counted().has(present) && !setup.equals(present))
                .map(setup -> new Comparison(present, setup, Optional.empty()))
                .map(pair -> {
                    Estimate found = fits.estimate(pair);
                    return new ChangeLedger.AgainstPresent(
                            pair.to(), found.difference(), found.standardError(), found.degrees(), tried.call(pair));
                })
                .toList();
    }

    private static double meanDrift(Fits fits) {
        return fits.counted().observations().stream()
                .mapToDouble(pull -> fits.all().drift(pull.day()))
                .average()
                .orElseThrow();
    }

    private static List<ChangeLedger.Residual> residuals(Fits fits) {
        List<ChangeLedger.Residual> residuals = new ArrayList<>();
        for (PullSequence.Entry entry : fits.counted().entries()) {
            Observation pull = entry.observation();
            residuals.add(new ChangeLedger.Residual(
                    entry.pull().pull().id(),
                    entry.setup(),
                    Estimate.percent(pull.y() - fits.all().level(pull.setting())),
                    Estimate.percent(fits.all().driftAt(pull))));
        }
        return residuals;
    }
}
