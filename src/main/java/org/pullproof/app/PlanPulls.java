package org.pullproof.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.Plan;
import org.pullproof.changes.Planner;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;

/** Plans the pulls of a day: for a gain that is to be seen, or what a given order can see. */
public final class PlanPulls {
    /**
     * A gain that is to be seen.
     *
     * @param gainPercent the gain
     * @param settings how many setups, the base counted
     * @param minutes how long there is, if that is limited
     */
    public record Wanted(double gainPercent, int settings, OptionalInt minutes) {
        public Wanted {
            if (!(gainPercent > 0) || gainPercent > 100) {
                throw new IllegalArgumentException("A gain to plan for is between 0 and 100 %, such as 1.5%.");
            }
            if (settings < 2 || settings > 12) {
                throw new IllegalArgumentException("A plan has 2 to 12 setups, the base counted.");
            }
        }

        OptionalInt mostPulls() {
            return minutes.isPresent()
                    ? OptionalInt.of(minutes.getAsInt() / Planner.MINUTES_A_PULL)
                    : OptionalInt.empty();
        }
    }

    /**
     * A plan with what is to be said of it.
     *
     * @param plan the order
     * @param scatterPercent the scatter it was made with
     * @param enough whether it sees the gain that was wanted
     * @param sentence in words
     */
    public record Planned(Plan plan, double scatterPercent, boolean enough, Sentence sentence) {}

    /** The scatter of a session's own pulls, or the one assumed without any; percent. */
    public static double scatterOf(Optional<ChangeLedger> ledger) {
        return ledger.map(ChangeLedger::repeatabilityPercent)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .orElse(Planner.assumedScatter());
    }

    /**
     * The plan with the least effort that sees the gain; where none does in that time, the one that sees most.
     *
     * @throws IllegalArgumentException with a sentence if there is no time for any plan
     */
    public Planned forGain(Wanted wanted, double scatter) {
        Planner planner = new Planner(scatter);
        Optional<Plan> enough = planner.forGain(wanted.gainPercent(), wanted.settings(), wanted.mostPulls());
        Plan plan = enough.or(() -> planner.sharpest(wanted.settings(), wanted.mostPulls()))
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no time to come back to the base: a pull takes about " + Planner.MINUTES_A_PULL
                                + " minutes, and this needs at least " + (wanted.settings() + 1) + " pulls."));
        String miss = enough.isPresent()
                ? ""
                : "**A gain of " + Figures.percent(wanted.gainPercent(), 1) + " cannot be seen"
                        + (wanted.minutes().isPresent() ? " in that time" : " on one day")
                        + ".** The most that can be: ";
        return new Planned(plan, scatter, enough.isPresent(), new Sentence(miss + words(plan, scatter)));
    }

    /** What an order can see. */
    public Planned of(List<String> order, int pulls, double scatter) {
        Plan plan = new Planner(scatter).of(order, pulls);
        String warning = plan.returns()
                ? ""
                : " It never comes back: a drift of the day passes for a change, and this figure is true only without one.";
        return new Planned(plan, scatter, true, new Sentence(words(plan, scatter) + warning));
    }

    private static String words(Plan plan, double scatter) {
        return "**" + String.join("-", plan.order()) + "** with " + plan.pullsPerSetup()
                + (plan.pullsPerSetup() == 1 ? " pull" : " pulls") + " at each visit, " + plan.totalPulls()
                + " in all, about "
                + plan.totalPulls() * Planner.MINUTES_A_PULL + " minutes, sees a gain of **"
                + Figures.percent(plan.detectablePercent(), 1) + "** four times in five, with a scatter of "
                + Figures.percent(scatter, 2)
                + " a pull. Before it two pulls to warm up that count for nothing; then make all"
                + " pulls, and only then read.";
    }
}
