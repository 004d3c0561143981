package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.car.Car;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.compression.Levels;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.health.nexttest.TestCosts;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;

/**
 * Says whether an engine is sound. The readings of its cylinders are weighed by the fault model; sound needs, besides its yes,
 * compression in every cylinder, oil pressure at hot idle, and nothing else that speaks against it; what neither makes it sound nor
 * settles a fault leaves it not settled, with what is missing. Cylinders alone never make an engine sound.
 */
public final class HealthAssessor {
    /** A tester whose gauges differ by more than this with the hose closed is said to be off (judgement). */
    private static final double ZERO_OFF = 0.02;

    private final HealthLimits limits;
    private final FaultModel faults;
    private final TestCosts costs;

    public HealthAssessor(HealthLimits limits, FaultModel faults, TestCosts costs) {
        this.limits = limits;
        this.faults = faults;
        this.costs = costs;
    }

    /**
     * Assesses readings in the order they came; which cylinder was read first does not matter.
     *
     * @param readings all readings of the session, work included
     * @param profile the engine
     * @param car whether it runs, and where it stands
     * @param figures how sentences write figures
     */
    public HealthFindings assess(List<Reading> readings, EngineProfile profile, Car car, Figures figures) {
        Evidence evidence = Evidence.of(readings, profile, car, figures);
        FaultJudge weighed = new FaultJudge(evidence, faults);
        CylinderJudge judge = new CylinderJudge(evidence, limits, weighed);
        EngineJudge engine = new EngineJudge(evidence.engineSigns(), limits, figures);
        List<CylinderFindings> cylinders =
                evidence.cylinders().stream().map(judge::findings).toList();
        List<Ground> grounds = grounds(evidence, weighed, judge, engine, car);
        Verdict verdict = verdict(grounds);
        return new HealthFindings(
                verdict,
                new HealthAnswer(cylinders, grounds, engine.notLookedFor()).of(verdict),
                grounds.stream().map(Ground::sentence).toList(),
                remarks(evidence, weighed, engine),
                missing(evidence, judge),
                evidence.comparison().spreadPercent(),
                evidence.rules().map(rules -> rules.judge(figures)).orElse(List.of()),
                cylinders,
                List.copyOf(evidence.engineSigns()),
                new FaultReport(evidence, weighed, faults.constants())
                        .findings(car, FaultReport.everRead(readings), costs));
    }

    private static List<Ground> grounds(
            Evidence evidence, FaultJudge weighed, CylinderJudge judge, EngineJudge engine, Car car) {
        List<Ground> grounds = new ArrayList<>(weighed.grounds());
        levelGround(evidence).ifPresent(grounds::add);
        grounds.addAll(judge.leakGrounds());
        evidence.cylinders().forEach(cylinder -> grounds.addAll(judge.grounds(cylinder)));
        compressionLacking(evidence, judge).ifPresent(grounds::add);
        grounds.addAll(engine.grounds(car));
        return Ground.strongestFirst(grounds);
    }

    private static Verdict verdict(List<Ground> grounds) {
        if (Ground.any(grounds, Ground.Weight.FAILS)) {
            return Verdict.NOT_SOUND;
        }
        return Ground.any(grounds, Ground.Weight.DOUBTS) || Ground.any(grounds, Ground.Weight.LACKS)
                ? Verdict.NOT_SETTLED
                : Verdict.SOUND;
    }

    /** Where every cylinder was read, which one is lowest and how far they lie apart. */
    private static Optional<Ground> levelGround(Evidence evidence) {
        return Levels.of(evidence.comparison().pascal().values())
                .filter(levels -> evidence.comparison().alike().size()
                        == evidence.profile().cylinders())
                .map(levels -> new Ground(
                        Ground.Weight.SPEAKS_FOR,
                        "",
                        "Compression spreads " + Figures.percent(levels.spreadPercent(), 1) + ", cylinder "
                                + lowest(evidence) + " the lowest."));
    }

    private static int lowest(Evidence evidence) {
        return evidence.comparison().pascal().entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private static List<Integer> without(Evidence evidence, CylinderJudge judge) {
        return evidence.cylinders().stream()
                .filter(cylinder -> !judge.hasComparableCompression(cylinder))
                .toList();
    }

    private static Optional<Ground> compressionLacking(Evidence evidence, CylinderJudge judge) {
        List<Integer> without = without(evidence, judge).stream()
                .filter(cylinder -> !evidence.dry().containsKey(cylinder))
                .toList();
        if (without.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Ground.lacks(
                without.size() == evidence.profile().cylinders()
                        ? "compression has not been read"
                        : "compression of " + Phrase.cylinders(without) + " has not been read"));
    }

    private List<TestKind> missing(Evidence evidence, CylinderJudge judge) {
        List<TestKind> missing = new ArrayList<>();
        if (!without(evidence, judge).isEmpty()) {
            missing.add(TestKind.COMPRESSION_DRY);
        }
        if (evidence.engineSigns().stream().noneMatch(sign -> sign.test() == TestKind.OIL_PRESSURE)) {
            missing.add(TestKind.OIL_PRESSURE);
        }
        return missing;
    }

    private List<String> remarks(Evidence evidence, FaultJudge weighed, EngineJudge engine) {
        List<String> remarks = new ArrayList<>(weighed.repeats());
        remarks.addAll(evidence.comparison().takenAsAlike());
        slowCranking(evidence).ifPresent(remarks::add);
        remarks.addAll(new CompressionNotes(evidence).all());
        remarks.addAll(new TrimNotes(evidence, limits).all());
        AltitudeNote.of(evidence, limits, weighed.statesCalled().contains(EngineState.RINGS_ALL))
                .ifPresent(remarks::add);
        oneRoundOnly(evidence).ifPresent(remarks::add);
        remarks.addAll(supplyNotRecorded(evidence));
        offZero(evidence).ifPresent(remarks::add);
        remarks.addAll(engine.remarks());
        return remarks;
    }

    private Optional<String> slowCranking(Evidence evidence) {
        return evidence.comparison().alike().values().stream()
                .flatMap(reading -> reading.conditions().crankingVolts().stream())
                .map(Quantity::si)
                .filter(volts -> volts < limits.crankingVolts())
                .min(Double::compare)
                .map(volts -> "Cranked at " + Figures.number(volts, 1) + Figures.NO_BREAK_SPACE + "V, below "
                        + Figures.number(limits.crankingVolts(), 1) + Figures.NO_BREAK_SPACE
                        + "V (judgement): slow cranking makes all readings low.");
    }

    private static Optional<String> offZero(Evidence evidence) {
        return evidence.leakReadings().values().stream()
                .flatMapToDouble(reading -> LeakReading.closedShare(reading).stream())
                .filter(share -> Math.abs(1 - share) > ZERO_OFF)
                .boxed()
                .findFirst()
                .map(share -> "With its hose closed the leak-down tester showed "
                        + Figures.percent(100 * share, 0)
                        + " of its supply: leaks are counted from there. Set its zero before the next run.");
    }

    private static Optional<String> oneRoundOnly(Evidence evidence) {
        boolean any = !evidence.drops().means().isEmpty();
        return any && evidence.drops().repeatScatter().isEmpty()
                ? Optional.of("Balance was read in one round; a second, in reverse order, shows its scatter.")
                : Optional.empty();
    }

    private static List<String> supplyNotRecorded(Evidence evidence) {
        List<Integer> silent = evidence.leakReadings().keySet().stream()
                .filter(cylinder -> !evidence.leaks().containsKey(cylinder))
                .toList();
        return silent.isEmpty()
                ? List.of()
                : List.of("Leak-down of " + Phrase.cylinders(silent)
                        + ": the supply was not recorded, so the pressure says nothing.");
    }
}
