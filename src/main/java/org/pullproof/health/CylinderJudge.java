package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.balance.BalanceDrops;
import org.pullproof.health.compression.SeaLevel;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.Part;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** Brings the tests of one cylinder together: its state, its words, its grounds. */
final class CylinderJudge {
    private final Evidence evidence;
    private final HealthLimits limits;
    private final CompressionJudge compression;
    private final LeakJudge leak;
    private final FaultJudge faults;

    CylinderJudge(Evidence evidence, HealthLimits limits, FaultJudge faults) {
        this.faults = faults;
        this.evidence = evidence;
        this.limits = limits;
        this.compression = new CompressionJudge(evidence, limits);
        this.leak = new LeakJudge(evidence, limits, compression, faults);
    }

    /** A state with its words. */
    private record Standing(State state, String words) {}

    CylinderFindings findings(int cylinder) {
        Standing standing = standing(cylinder);
        Optional<Reading.Compression> dry = Optional.ofNullable(evidence.dry().get(cylinder));
        Optional<LeakReading> leakReading = Optional.ofNullable(evidence.leaks().get(cylinder));
        Optional<Double> drop = Optional.ofNullable(evidence.drops().means().get(cylinder));
        return new CylinderFindings(
                cylinder,
                standing.state(),
                standing.words(),
                dry.map(Reading.Compression::gauge),
                seaLevel(dry),
                dry.flatMap(Reading.Compression::first),
                Optional.ofNullable(evidence.wet().get(cylinder)).map(Reading.Compression::gauge),
                dry.map(reading -> reading.conditions().strokes()).orElse(OptionalInt.empty()),
                leakPercent(leakReading),
                leakReading.map(LeakReading::words),
                leakReading.map(LeakReading::areaMm2).orElse(OptionalDouble.empty()),
                leakReading.map(LeakReading::referencePercent).orElse(OptionalDouble.empty()),
                leak.air(cylinder),
                drop.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                evidence.drops().sharePercent(cylinder),
                evidence.word(cylinder, TestKind.PLUG),
                before(cylinder));
    }

    private OptionalDouble seaLevel(Optional<Reading.Compression> dry) {
        return dry.stream()
                .flatMapToDouble(reading -> evidence.station(reading).stream()
                        .map(station -> SeaLevel.restated(reading.gauge().si(), station)))
                .findFirst();
    }

    /** A zone has no figure. */
    private static OptionalDouble leakPercent(Optional<LeakReading> reading) {
        return reading.stream()
                .filter(leak -> leak.fromPercent() == leak.toPercent())
                .mapToDouble(LeakReading::fromPercent)
                .findFirst();
    }

    private List<String> before(int cylinder) {
        return evidence.chapters().before(cylinder).stream()
                .map(closed -> ReadingWords.of(closed.reading(), evidence.figures()) + ", before "
                        + workWords(closed.work().what()) + ".")
                .toList();
    }

    private static String workWords(String work) {
        return switch (work) {
            case "lash-set" -> "the lash was set";
            case "ignition-parts" -> "parts of the ignition were renewed";
            default -> "work done (" + work + ")";
        };
    }

    /** The words come from the readings; whether anything is held against the cylinder, the fault model says. */
    private Standing standing(int cylinder) {
        Standing read = failing(cylinder).or(() -> doubtful(cylinder)).orElseGet(() -> quiet(cylinder));
        if (!faults.doubtful(cylinder).isEmpty() && !faults.called(cylinder)) {
            return new Standing(State.IN_DOUBT, "in doubt: repeat " + repeat(cylinder));
        }
        boolean plain = read.state() == State.LEVEL;
        return faults.called(cylinder) && plain
                ? new Standing(State.IN_DOUBT, "in doubt: " + likeliest(cylinder))
                : read;
    }

    private String repeat(int cylinder) {
        return Phrase.list(faults.doubtful(cylinder).stream().map(Part::words).toList());
    }

    private String likeliest(int cylinder) {
        return faults.posterior().candidates(cylinder).entrySet().stream()
                .filter(entry -> entry.getKey().fault() != Fault.SOUND)
                .max(Map.Entry.comparingByValue())
                .map(entry -> FaultWords.name(entry.getKey()))
                .orElse("");
    }

    private Optional<Standing> failing(int cylinder) {
        boolean low = compression.standing(cylinder) == CompressionJudge.Standing.LOW;
        boolean leaks = leak.standing(cylinder) == LeakJudge.Standing.LEAKS;
        Optional<String> seen = CylinderSigns.seen(evidence, cylinder);
        if (low || leaks) {
            String first = low ? "low" : "leaky";
            return Optional.of(new Standing(State.LOW, first + why(cylinder, leaks)));
        }
        return seen.map(words -> new Standing(State.LOW, words));
    }

    private String why(int cylinder, boolean leaks) {
        if (leaks) {
            return ", " + leak.airWords(cylinder);
        }
        Optional<Integer> neighbour = compression.lowNeighbour(cylinder);
        if (neighbour.isPresent()) {
            return ", like " + neighbour.get() + " beside it";
        }
        if (compression.oilHelps(cylinder)) {
            return ", oil brings it up";
        }
        return compression.oilDoesNotHelp(cylinder) ? ", oil does not help" : "";
    }

    private Optional<Standing> doubtful(int cylinder) {
        return doubt(cylinder).map(words -> new Standing(State.IN_DOUBT, "in doubt: " + words));
    }

    private Optional<String> doubt(int cylinder) {
        return weakPull(cylinder)
                .or(() -> leakDoubt(cylinder))
                .or(() -> compressionDoubt(cylinder))
                .or(() -> CylinderSigns.doubt(evidence, cylinder, limits));
    }

    private Optional<String> weakPull(int cylinder) {
        return switch (pull(cylinder)) {
            case NONE -> Optional.of("it pulls nothing" + besideCompression(cylinder));
            case WEAK -> Optional.of("it pulls little" + besideCompression(cylinder));
            case LEVEL, NOT_JUDGED -> Optional.empty();
        };
    }

    private String besideCompression(int cylinder) {
        return switch (compression.standing(cylinder)) {
            case LEVEL -> ", compression is level: spark or mixture";
            case BELOW -> ", compression is a little low";
            case LOW -> ", compression is low";
            case DISAGREES, NOT_COMPARABLE -> ", compression must be read again";
            case ALONE, NOT_READ -> "";
        };
    }

    private Optional<String> leakDoubt(int cylinder) {
        return switch (leak.standing(cylinder)) {
            case LEAKS_UNHEARD -> Optional.of("it leaks, no air heard");
            case MISFIT -> Optional.of("leak-down and compression do not fit");
            case MAY_LEAK -> Optional.of("it may leak");
            case LEAKS, WITHIN, NOT_READ -> Optional.empty();
        };
    }

    private Optional<String> compressionDoubt(int cylinder) {
        return switch (compression.standing(cylinder)) {
            case BELOW -> Optional.of("a little low");
            case DISAGREES -> Optional.of("its readings disagree");
            default -> Optional.empty();
        };
    }

    private Standing quiet(int cylinder) {
        return switch (compression.standing(cylinder)) {
            case LEVEL -> new Standing(State.LEVEL, "level with the others");
            case NOT_COMPARABLE ->
                new Standing(State.NOT_COMPARABLE, "not comparable: " + compression.whyNot(cylinder));
            case ALONE -> new Standing(State.NOT_COMPARABLE, "not comparable: no other was read");
            default -> withoutCompression(cylinder);
        };
    }

    private Standing withoutCompression(int cylinder) {
        if (leak.standing(cylinder) == LeakJudge.Standing.WITHIN) {
            return new Standing(State.LEVEL, "holds its air");
        }
        return switch (pull(cylinder)) {
            case LEVEL -> new Standing(State.LEVEL, "pulls like the others");
            case NOT_JUDGED, WEAK, NONE ->
                evidence.drops().means().containsKey(cylinder)
                        ? new Standing(State.NOT_COMPARABLE, "not comparable: too few balance drops")
                        : new Standing(State.NOT_MEASURED, "not measured");
        };
    }

    private BalanceDrops.Pull pull(int cylinder) {
        return evidence.drops()
                .judge(cylinder, new BalanceDrops.Limits(limits.weakDrop(), limits.weakScatter(), limits.deadDrop()));
    }

    /** What the leak-down readings bring to the verdict, cylinders told together. */
    List<Ground> leakGrounds() {
        return leak.grounds();
    }

    /** Everything else that this cylinder brings to the verdict; what the fault model has weighed is only told. */
    List<Ground> grounds(int cylinder) {
        List<Ground> grounds = new ArrayList<>();
        compression
                .ground(cylinder)
                .map(ground -> ofCompression(cylinder, ground))
                .ifPresent(grounds::add);
        pullGround(cylinder).map(ground -> ofPull(cylinder, ground)).ifPresent(grounds::add);
        grounds.addAll(CylinderSigns.grounds(evidence, cylinder, limits));
        return grounds;
    }

    private Ground ofCompression(int cylinder, Ground ground) {
        boolean blunder = faults.doubtful(cylinder).contains(Part.DRY);
        boolean weighed = switch (compression.standing(cylinder)) {
            case LOW -> faults.called(cylinder);
            case BELOW -> faults.called(cylinder) || faults.clear(cylinder);
            default -> false;
        };
        return weighed || blunder ? ground.told() : ground.asDoubt();
    }

    private Ground ofPull(int cylinder, Ground ground) {
        return faults.called(cylinder) || faults.clear(cylinder) ? ground.told() : ground.asDoubt();
    }

    /** A cylinder that pulls nothing fails; one that pulls little is in doubt. */
    private Optional<Ground> pullGround(int cylinder) {
        BalanceDrops drops = evidence.drops();
        Optional<Double> own = Optional.ofNullable(drops.means().get(cylinder));
        BalanceDrops.Pull pull = pull(cylinder);
        if (own.isEmpty() || pull == BalanceDrops.Pull.LEVEL || pull == BalanceDrops.Pull.NOT_JUDGED) {
            return Optional.empty();
        }
        String sentence = "Cylinder " + cylinder + ": drop "
                + Figures.number(own.get(), 0) + " of about "
                + evidence.figures().of(drops.medianOfOthers(cylinder).orElse(0), Shown.SPEED)
                + besideCompression(cylinder) + ".";
        return Optional.of(pull == BalanceDrops.Pull.NONE ? Ground.fails("", sentence) : Ground.doubts("", sentence));
    }

    boolean hasComparableCompression(int cylinder) {
        return switch (compression.standing(cylinder)) {
            case LEVEL, BELOW, LOW, DISAGREES -> true;
            case NOT_READ, NOT_COMPARABLE, ALONE -> false;
        };
    }
}
