package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** The sentences of the ledger. */
final class ChangeWords {
    /** A drift of this size is called typical when we say what it would do, percent a pull. */
    private static final double TYPICAL_DRIFT = 0.3;

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

    /**
     * What one call is made from.
     *
     * @param steps how many recorded changes were tried
     * @param beforeKw mean of the older setup, kW
     */
    record Said(Comparison pair, Fits fits, Estimate estimate, Call call, boolean holds, int steps, double beforeKw) {}

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
        if (said.call() == Call.GAIN || said.call() == Call.LOSS) {
            parts.add(weight(said));
        }
        parts.add(days(said.pair()));
        parts.add(drift(said));
        parts.removeIf(String::isEmpty);
        return String.join(" ", parts);
    }

    private String reason(Said said) {
        Estimate estimate = said.estimate();
        return switch (said.call()) {
            case GAIN, LOSS -> between(estimate) + ".";
            case SAME -> between(estimate) + ": inside ± " + percent(smallest) + ", the least you would pay for.";
            case SPOILED ->
                "Shown only, not comparable: " + Flagged.named(pullsOfSpoiledSides(said)) + ". " + between(estimate)
                        + ".";
            case NO_CALL -> hinges(said) + between(estimate) + ": no call yet.";
        };
    }

    private String hinges(Said said) {
        boolean agreed = said.fits().commonCall(said.pair(), smallest).isPresent();
        return agreed ? "" : "Hinges on " + Flagged.named(countedPulls()) + ": check or repeat. ";
    }

    private List<PullFindings> countedPulls() {
        return counted.entries().stream().map(PullSequence.Entry::pull).toList();
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

    private String weight(Said said) {
        String small = Call.inside(said.estimate(), smallest)
                ? Wording.capital(said.call().words()) + ", but smaller than you care about."
                : "";
        String many = said.steps() < 2
                ? ""
                : (said.holds() ? "Holds" : "Does not hold") + " allowing for all " + Wording.word(said.steps())
                        + " changes tried.";
        return (small + " " + many).strip();
    }

    private String days(Comparison pair) {
        if (counted.shareADay(pair.from(), pair.to())) {
            return "";
        }
        return counted.linked(pair.from(), pair.to())
                ? "Measured on different days, linked by setups that were pulled on more than one."
                : "Measured on different days that no setup links: the scatter from day to day is in the interval.";
    }

    /** Where nothing was pulled twice, time and change cannot be told apart. */
    private String drift(Said said) {
        double leverage = said.fits()
                .all()
                .driftLeverage(
                        counted.number(said.pair().to()),
                        counted.number(said.pair().from()));
        boolean apart = said.fits().all().driftIsMeasured() || Math.abs(leverage) < 0.5;
        return apart
                ? ""
                : Wording.capital(setupName(said.pair().to())) + " came after "
                        + setupName(said.pair().from())
                        + " and neither was pulled again: a drift of "
                        + Figures.percent(TYPICAL_DRIFT, 1) + " a pull alone would move this by "
                        + Figures.percent(TYPICAL_DRIFT * Math.abs(leverage), 1) + ".";
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
