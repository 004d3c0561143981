package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** The sentences of the ledger. */
final class ChangeWords {
    private final List<Setup> setups;
    private final PullSequence counted;
    private final double smallest;
    private final Figures figures;
    private final String standard;
    private final List<PullFindings> withoutAir;

    ChangeWords(List<Setup> setups, PullSequence counted, double smallest, Figures figures) {
        this.setups = setups;
        this.counted = counted;
        this.smallest = smallest;
        this.figures = figures;
        this.withoutAir = counted.entries().stream()
                .map(PullSequence.Entry::pull)
                .filter(pull -> pull.factor().isEmpty())
                .toList();
        this.standard = standard(counted);
    }

    private static String standard(PullSequence counted) {
        return counted.entries().isEmpty()
                ? ""
                : counted.basis().standardWords(counted.entries().get(0).pull());
    }

    String setupName(String id) {
        return setups.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }

    String name(Comparison pair) {
        return setupName(pair.from()) + " → " + setupName(pair.to());
    }

    String noPull(String setup) {
        return "No pull of " + setupName(setup) + " counts yet.";
    }

    String noneCounts(String setup, List<PullFindings> spoiled) {
        return "No pull of " + setupName(setup) + " can be compared: " + Flagged.explained(spoiled) + ".";
    }

    /** One call in words. */
    String sentence(Said said) {
        List<String> parts = new ArrayList<>();
        parts.add(reason(said));
        parts.add(amount(said));
        parts.add(said.curve().map(ChangeWords::regions).orElse(""));
        if (said.call() == Call.GAIN || said.call() == Call.LOSS) {
            parts.add(weight(said));
        }
        parts.add(more(said));
        parts.add(days(said.pair()));
        parts.add(said.call() == Call.SPOILED ? "" : new DriftWords(this::setupName).of(said));
        parts.removeIf(String::isEmpty);
        return String.join(" ", parts);
    }

    private String reason(Said said) {
        Estimate estimate = said.estimate();
        return switch (said.call()) {
            case GAIN, LOSS -> between(estimate) + ".";
            case SAME -> between(estimate) + ": inside ± " + percent(smallest) + ", the least you would pay for.";
            case SPOILED -> "Shown only, not comparable: " + spoiled(said) + " " + between(estimate) + ".";
            case NO_CALL -> hinges(said) + between(estimate) + ": no call yet.";
        };
    }

    private static String hinges(Said said) {
        List<PullFindings> doubtful = said.fits().doubtful();
        String names = Wording.list(said.settling().hingesOn());
        if (names.isEmpty()) {
            return "";
        }
        boolean allOdd = doubtful.stream().noneMatch(Flagged::spoils);
        return allOdd
                ? "Hinges on " + names + (doubtful.size() > 1 ? ", of which one is odd" : ", which is odd")
                        + ": check or repeat. "
                : "Hinges on " + Flagged.named(doubtful) + ": check or repeat. ";
    }

    /** Why the two sides cannot be compared, and what would make it so. */
    private String spoiled(Said said) {
        RotatingParts rotating = said.fits().rotating();
        Comparison pair = said.pair();
        return rotating.same(pair.from(), pair.to())
                ? Flagged.named(pullsOfSpoiledSides(said)) + "; pull it again without that."
                : rotating.between(pair.from(), pair.to()) + " changed, and while the speed rises that reads as power."
                        + " Put the same parts on both sides, or read power at a held speed.";
    }

    private static List<PullFindings> pullsOfSpoiledSides(Said said) {
        return Stream.of(said.pair().from(), said.pair().to())
                .filter(side -> !said.fits().clean().has(side))
                .flatMap(side -> said.fits().counted().pullsOf(side).stream())
                .toList();
    }

    private String between(Estimate estimate) {
        return "Between " + Figures.signed(Estimate.percent(estimate.low()), 1) + " and "
                + Figures.signedPercent(Estimate.percent(estimate.high()), 1);
    }

    private static String percent(double points) {
        return Figures.percent(points, points == Math.rint(points) ? 0 : 1);
    }

    private String amount(Said said) {
        double watt = said.beforeKw() * 10;
        Estimate estimate = said.estimate();
        return power(watt * Estimate.percent(estimate.difference()))
                + Figures.NO_BREAK_SPACE + figures.unit(Shown.POWER).symbol() + " at the wheels ("
                + power(watt * Estimate.percent(estimate.low())) + " to "
                + power(watt * Estimate.percent(estimate.high())) + "), " + standard + ".";
    }

    private String power(double watt) {
        return Figures.signed(watt / figures.unit(Shown.POWER).factor(), Shown.POWER.decimals(figures.system()));
    }

    /** Base to now from the pulls of these two alone, beside what the steps add up to. */
    String alone(double steps, Estimate alone) {
        double percent = Estimate.percent(alone.difference());
        return "The steps add up to " + Figures.signedPercent(steps, 1) + "; the pulls of these two alone say "
                + Figures.signedPercent(percent, 1) + " (" + Figures.signed(Estimate.percent(alone.low()), 1) + " to "
                + Figures.signed(Estimate.percent(alone.high()), 1) + "), "
                + Figures.number(Math.abs(percent - steps), 1) + " points apart.";
    }

    private String weight(Said said) {
        String small = Call.inside(said.estimate(), smallest)
                ? Wording.capital(said.call().words()) + ", but smaller than you care about."
                : "";
        String many = said.steps() < 2
                ? ""
                : (said.holds() ? "Holds" : "Does not hold") + " allowing for " + manyTried(said.steps()) + ".";
        return (small + " " + many).strip();
    }

    private static String manyTried(int steps) {
        return steps == 2 ? "both changes tried" : "all " + Wording.word(steps) + " changes tried";
    }

    private static String regions(CurveBand curve) {
        return curve.regions().stream()
                .map(region -> (region.sign() > 0 ? "Gained" : "Lost") + " at least from "
                        + Figures.number(region.fromRpm(), 0) + " to " + Figures.number(region.toRpm(), 0) + " rpm.")
                .collect(Collectors.joining(" "));
    }

    /** What would settle it; asks for the whole batch, since looking after every pull makes false gains. */
    private String more(Said said) {
        if (!said.settling().open()) {
            return "";
        }
        String pair =
                setupName(said.pair().from()) + " and " + setupName(said.pair().to());
        return said.settling().pulls().isPresent()
                ? "About " + said.settling().pulls().getAsInt() + " more pulls, two by two on " + pair
                        + " in turn, would settle it: make them all, then read."
                : "More than " + MorePulls.MOST + " more pulls would be needed: not worth chasing.";
    }

    private String days(Comparison pair) {
        if (counted.shareADay(pair.from(), pair.to())) {
            return "";
        }
        return counted.linked(pair.from(), pair.to())
                ? "Measured on different days, linked by setups that were pulled on more than one."
                : "Measured on different days that no setup links: the scatter from day to day is in the interval, a day"
                        + " that began cold is not.";
    }

    /** The sheet's answer. */
    Sentence answer(List<JudgedChange> judged) {
        if (counted.entries().isEmpty()) {
            return new Sentence(
                    "**No pull counts yet.** A change is judged by pulls before it, after it, and back again.");
        }
        if (judged.isEmpty()) {
            return new Sentence("**Nothing to compare yet.** Every pull that counts is on "
                    + setupName(counted.settings().get(0)) + "; change one thing and pull again, then go back.");
        }
        return new Sentence(new AnswerWords(this::setupName, judged).marked() + onMeasured());
    }

    private String onMeasured() {
        return counted.basis() != Basis.MEASURED
                ? ""
                : " Judged on measured power, since the air is missing for "
                        + Wording.list(
                                withoutAir.stream().map(PullFindings::name).toList()) + ".";
    }
}
