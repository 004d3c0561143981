package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.units.Figures;

/** Chances and proposals as people read them on the command line. */
final class FaultLines {
    private static final double WORTH_TELLING = 0.1;

    private FaultLines() {}

    /** Cylinders of which something is held against, each candidate with what fits and what speaks against it. */
    static List<String> candidates(FaultFindings faults) {
        List<String> lines = new ArrayList<>();
        faults.cylinders().stream()
                .filter(one -> one.candidates().stream()
                        .anyMatch(candidate -> !candidate.fits().isEmpty()
                                || !candidate.against().isEmpty()))
                .forEach(one -> lines.addAll(lines(one)));
        return lines;
    }

    private static List<String> lines(CylinderChances cylinder) {
        List<String> lines = new ArrayList<>();
        for (CandidateChance candidate : cylinder.candidates()) {
            lines.add("cylinder " + cylinder.number() + ": " + candidate.words() + ", "
                    + percent(candidate.probability()));
            candidate.fits().forEach(reading -> lines.add("  fits: " + reading));
            candidate.against().forEach(reading -> lines.add("  against: " + reading));
        }
        return lines;
    }

    /** What may hold for the engine or between neighbours. */
    static List<String> engineWide(FaultFindings faults) {
        List<String> lines = new ArrayList<>();
        faults.pairs().stream()
                .filter(chance -> chance.probability() >= WORTH_TELLING)
                .forEach(chance ->
                        lines.add("gasket between cylinders " + chance.pair().one() + " and "
                                + chance.pair().other() + ", " + percent(chance.probability())));
        faults.engineWide().stream()
                .filter(chance -> chance.probability() >= WORTH_TELLING)
                .forEach(chance -> lines.add(chance.words() + ", " + percent(chance.probability())));
        return lines;
    }

    /** Tests worth doing, or that none is. */
    static List<String> nextTests(FaultFindings faults) {
        List<String> lines = new ArrayList<>();
        faults.nextTests()
                .forEach(proposed -> lines.add(proposed.test().test().words() + ", "
                        + proposed.test().cost().minutes() + " min, $"
                        + Figures.number(proposed.test().cost().dollars(), 0) + ". " + proposed.why()));
        return lines.isEmpty() && !faults.nextWords().isEmpty() ? List.of(faults.nextWords()) : lines;
    }

    private static String percent(double p) {
        return "chance " + Figures.percent(100 * p, 0);
    }
}
