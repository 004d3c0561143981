package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.units.Figures;

/** What may be wrong, how sure, and which test is worth doing next. */
record FaultBlocks(FaultFindings faults) {
    private static final double WORTH_TELLING = 0.1;

    /** What each cylinder, pair and the engine may have; nothing where nothing is suspected. */
    Optional<Block> candidates() {
        return Optional.of(rows()).filter(rows -> !rows.isEmpty()).map(FaultBlocks::candidates);
    }

    /**
     * The next tests of the cylinders.
     *
     * @param said what was said already: a test whose reason stands there is not told again
     */
    List<Block> nextTests(String said) {
        List<String> next = next(said);
        return faults.read() && !next.isEmpty()
                ? List.of(new Block.Points("nextTests", "Next test of the cylinders", next, false))
                : List.of();
    }

    private static Block candidates(List<List<Cell>> rows) {
        return new Block.Table(
                "candidates",
                "What it may be (chances from the readings and from judgement)",
                List.of(
                        Block.Column.words("where", "Where"),
                        Block.Column.words("candidate", "Candidate"),
                        Block.Column.figures("probability", "Chance"),
                        Block.Column.words("fits", "Fits"),
                        Block.Column.words("against", "Speaks against")),
                rows);
    }

    private List<List<Cell>> rows() {
        List<List<Cell>> rows = new ArrayList<>();
        faults.cylinders().stream()
                .filter(FaultBlocks::suspected)
                .flatMap(FaultBlocks::rows)
                .forEach(rows::add);
        faults.pairs().stream()
                .filter(chance -> chance.probability() >= WORTH_TELLING)
                .map(chance -> row(
                        "cylinders " + chance.pair().one() + " and "
                                + chance.pair().other(),
                        "gasket between them",
                        chance.probability()))
                .forEach(rows::add);
        faults.engineWide().stream()
                .filter(chance -> faults.read() && chance.probability() >= WORTH_TELLING)
                .map(chance -> row("engine", chance.words(), chance.probability()))
                .forEach(rows::add);
        return rows;
    }

    private static boolean suspected(CylinderChances cylinder) {
        return cylinder.candidates().stream()
                .anyMatch(candidate ->
                        !candidate.fits().isEmpty() || !candidate.against().isEmpty());
    }

    private static Stream<List<Cell>> rows(CylinderChances cylinder) {
        return cylinder.candidates().stream()
                .filter(candidate -> candidate.probability() >= WORTH_TELLING / 10)
                .map(candidate -> row(cylinder.number(), candidate));
    }

    private static List<Cell> row(int cylinder, CandidateChance candidate) {
        return List.of(
                Cell.words("cylinder " + cylinder),
                Cell.words(candidate.words()),
                chance(candidate.probability()),
                Cell.words(String.join(" ", candidate.fits())),
                Cell.words(String.join(" ", candidate.against())));
    }

    private static List<Cell> row(String where, String what, double probability) {
        return List.of(Cell.words(where), Cell.words(what), chance(probability), Cell.words(""), Cell.words(""));
    }

    private static Cell chance(double probability) {
        return Cell.figure(Figures.percent(100 * probability, 0), probability);
    }

    private List<String> next(String said) {
        if (faults.nextTests().isEmpty()) {
            return faults.nextWords().isEmpty() ? List.of() : List.of(faults.nextWords());
        }
        return faults.nextTests().stream()
                .filter(proposed -> !said.contains(proposed.why()))
                .map(proposed -> proposed.test().test().words() + ", "
                        + proposed.test().cost().minutes() + " min, $"
                        + Figures.number(proposed.test().cost().dollars(), 0) + ". " + proposed.why())
                .toList();
    }
}
