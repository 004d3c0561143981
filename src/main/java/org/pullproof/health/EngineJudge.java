package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.car.Car;
import org.pullproof.car.Runs;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/** What was read of the whole engine: oil pressure, knock, coolant gas, vacuum, the cut filter, what was observed. */
final class EngineJudge {
    private final List<Reading.Sign> signs;
    private final HealthLimits limits;
    private final Figures figures;

    EngineJudge(List<Reading.Sign> signs, HealthLimits limits, Figures figures) {
        this.signs = signs;
        this.limits = limits;
        this.figures = figures;
    }

    List<Ground> grounds(Car car) {
        List<Ground> grounds = new ArrayList<>();
        grounds.add(oil(car));
        observed("knock-at-2500")
                .ifPresent(sign -> grounds.add(
                        Ground.fails("a deep knock at 2,500 rpm", "A deep knock at 2,500 rpm held: the bottom end.")));
        word(TestKind.FILTER_CUT, "bright-flakes")
                .ifPresent(sign -> grounds.add(Ground.fails(
                        "bright flakes in the cut filter", "Bright flakes in the cut filter: a bearing is wearing.")));
        word(TestKind.COOLANT_GAS, "positive")
                .ifPresent(
                        sign -> grounds.add(
                                Ground.fails(
                                        "combustion gas in the coolant",
                                        "The coolant-gas test is positive: a gasket or a crack lets combustion gas into the coolant.")));
        grounds.addAll(doubts());
        return grounds;
    }

    private Ground oil(Car car) {
        Optional<Quantity> read = of(TestKind.OIL_PRESSURE).flatMap(Reading.Sign::figure);
        if (read.isEmpty()) {
            return Ground.lacks(
                    car.runs().equals(Optional.of(Runs.NO))
                            ? "oil pressure hot has not been read, since it does not run"
                            : "oil pressure hot has not been read");
        }
        String clause = "oil pressure at hot idle is " + ReadingWords.asRead(read.get(), Shown.OIL_PRESSURE, figures);
        double psi = read.get().in(Unit.PSI);
        if (psi < limits.oilFailsPsi()) {
            return Ground.fails(
                    clause,
                    Phrase.capital(clause) + ", below " + oilLimit(limits.oilFailsPsi())
                            + " (judgement): the bottom end or the pump; a second gauge proves it.");
        }
        if (psi < limits.oilPlainPsi() && !bottomEndHeard()) {
            return Ground.doubts(
                    clause,
                    Phrase.capital(clause) + ", under " + oilLimit(limits.oilPlainPsi())
                            + " (judgement): listen for a deep knock at 2,500 rpm, or cut the filter open.");
        }
        return Ground.speaksFor(clause);
    }

    private String oilLimit(double psi) {
        return figures.of(Unit.PSI.toSi(psi), Shown.OIL_PRESSURE);
    }

    private boolean bottomEndHeard() {
        return observed("no-knock").isPresent()
                || word(TestKind.FILTER_CUT, "clean").isPresent();
    }

    private List<Ground> doubts() {
        List<Ground> doubts = new ArrayList<>();
        if (observed("hoses-hard").isPresent() && of(TestKind.COOLANT_GAS).isEmpty()) {
            doubts.add(Ground.doubts(
                    "hoses hard soon after a cold start",
                    "The hoses were hard within 2 min of a cold start; test the coolant for gas."));
        }
        observed("blue-smoke-load")
                .ifPresent(sign -> doubts.add(Ground.doubts(
                        "blue smoke under load", "Blue smoke under load speaks for worn rings; leak-down tells.")));
        of(TestKind.VACUUM).flatMap(Reading.Sign::word).ifPresent(word -> doubts.add(vacuum(word)));
        word(TestKind.COOLING_HOLD, "falls")
                .ifPresent(sign -> doubts.add(Ground.doubts(
                        "the cooling system does not hold its pressure",
                        "The cooling system does not hold its pressure for 15 min: look for the drip outside first; none"
                                + " outside speaks for a gasket.")));
        if (observed("bubbles").isPresent() && of(TestKind.COOLANT_GAS).isEmpty()) {
            doubts.add(Ground.doubts(
                    "bubbles in the coolant",
                    "Bubbles in the coolant of a cold engine: gas may get in; the coolant-gas test tells."));
        }
        chainSlack().ifPresent(doubts::add);
        return doubts;
    }

    private Optional<Ground> chainSlack() {
        double degrees = figure(TestKind.CHAIN_SLACK);
        String clause = "the cam drive has " + Figures.number(degrees, 0) + "° of slack";
        return degrees > limits.chainSlack()
                ? Optional.of(Ground.doubts(
                        clause,
                        Phrase.capital(clause) + ", more than " + Figures.number(limits.chainSlack(), 0)
                                + "° (judgement): replace it by the manual before the engine is loaded."))
                : Optional.empty();
    }

    /** The figure of a test, 0 where it was not read. */
    private double figure(TestKind test) {
        return of(test).flatMap(Reading.Sign::figure)
                .map(figure -> figure.figure().doubleValue())
                .orElse(0.0);
    }

    private static Ground vacuum(String word) {
        return switch (word) {
            case "steady-low" ->
                Ground.doubts(
                        "vacuum steady but low",
                        "The vacuum is steady but low: late ignition timing first, then cam timing or rings.");
            case "regular-flick" ->
                Ground.doubts(
                        "vacuum needle flicks regularly",
                        "The vacuum needle flicks regularly: one cylinder misses or a valve leaks; balance tells which.");
            case "sinks-at-2500" ->
                Ground.doubts(
                        "vacuum sinks at 2,500 rpm",
                        "The vacuum sinks while 2,500 rpm is held: the exhaust may be restricted.");
            default ->
                Ground.doubts(
                        "vacuum needle flicks at random",
                        "The vacuum needle flicks at random: a valve that sticks, or the mixture.");
        };
    }

    /** What must be said beside the verdict. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        List<String> notLookedFor = notLookedFor();
        if (!notLookedFor.isEmpty()) {
            remarks.add(Phrase.capital(Phrase.list(notLookedFor)) + " " + (notLookedFor.size() == 1 ? "has" : "have")
                    + " not been looked for.");
        }
        observed("blue-smoke-overrun")
                .ifPresent(
                        sign -> remarks.add("Blue smoke on the overrun points to valve guides: oil use, not power."));
        observed("milky-cap")
                .ifPresent(sign ->
                        remarks.add("A milky cap alone is no proof: short trips do it; test the coolant for gas."));
        charging().ifPresent(remarks::add);
        of(TestKind.CODES)
                .flatMap(Reading.Sign::word)
                .ifPresent(word -> remarks.add(
                        word.equals("not-ready")
                                ? "The monitors are not ready: the codes were erased lately, so their absence says nothing."
                                : "Codes stored: " + word + "."));
        return remarks;
    }

    private Optional<String> charging() {
        double volts = figure(TestKind.CHARGING);
        boolean out = volts > 0 && (volts < limits.chargingFrom() || volts > limits.chargingTo());
        return out
                ? Optional.of("It charges at " + Figures.number(volts, 1) + Figures.NO_BREAK_SPACE + "V, outside "
                        + Figures.number(limits.chargingFrom(), 1) + " to " + Figures.number(limits.chargingTo(), 1)
                        + Figures.NO_BREAK_SPACE
                        + "V (judgement): coils and pump follow the voltage, so put that right before a pull.")
                : Optional.empty();
    }

    /** Signs that would speak against the engine and have not been looked for. */
    List<String> notLookedFor() {
        List<String> open = new ArrayList<>();
        if (observed("no-knock").isEmpty() && observed("knock-at-2500").isEmpty()) {
            open.add("deep knock");
        }
        if (of(TestKind.COOLANT_GAS).isEmpty()) {
            open.add("coolant gas");
        }
        return open;
    }

    private Optional<Reading.Sign> of(TestKind test) {
        return signs.stream().filter(sign -> sign.test() == test).findFirst();
    }

    private Optional<Reading.Sign> word(TestKind test, String word) {
        return of(test).filter(sign -> sign.word().equals(Optional.of(word)));
    }

    private Optional<Reading.Sign> observed(String word) {
        return signs.stream()
                .filter(sign -> sign.test() == TestKind.OBSERVATION)
                .filter(sign -> sign.word().equals(Optional.of(word)))
                .findFirst();
    }
}
