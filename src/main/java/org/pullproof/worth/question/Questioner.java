package org.pullproof.worth.question;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.engine.FuelSystem;
import org.pullproof.health.FaultFindings.EngineChance;
import org.pullproof.health.LoadPoint;
import org.pullproof.health.faults.FaultSet;
import org.pullproof.units.Power;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.TestPrices;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.decision.problem.PowerNow;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.question.OptionList.Standing;
import org.pullproof.worth.question.TestList.Permitted;
import org.pullproof.worth.trade.Catalogue;
import org.pullproof.worth.trade.Plan;
import org.pullproof.worth.trade.Work;

/** Puts what a session knows as the question whether the engine is worth more money (worth.md 1). Immutable. */
public final class Questioner {
    /** Complete accounts of the engine that are asked for. */
    private static final double SHARE_ASKED = 0.999;

    private static final int MOST_ASKED = 400;
    private static final double LITRE = 1e-3;

    /** What no reading of a cylinder speaks of, and from which chance the readings taken speak for it (judgement). */
    private static final List<String> BESIDE = List.of("bottom-end", "exhaust-restricted");

    private static final double SPOKEN_OF = 0.05;
    private static final double SPOKEN_OF_BESIDE = 0.1;

    private final Catalogue usual;
    private final TestPrices prices;

    public Questioner(Catalogue usual, TestPrices prices) {
        this.usual = usual;
        this.prices = prices;
    }

    /** Whether the owner has said what a US dollar counts as. */
    public boolean rateTold() {
        return usual.numbers().number("rate.dollar").own();
    }

    /** The catalogue with what was entered under the name of a work in the place of the work's figures. */
    public Catalogue catalogue(Known known) {
        double dollar = usual.number("rate.dollar");
        Map<String, Double> own = new HashMap<>();
        for (Option option : entered(known)) {
            usual.works().values().stream()
                    .filter(work -> work.words().equalsIgnoreCase(option.name()))
                    .forEach(work -> own.putAll(figures(work, option, dollar)));
        }
        return usual.with(own);
    }

    private Map<String, Double> figures(Work work, Option option, double dollar) {
        Map<String, Double> figures = new HashMap<>();
        figures.put(work.number("p10"), option.low().value() / dollar);
        figures.put(work.number("p50"), option.likely().value() / dollar);
        figures.put(work.number("p90"), option.high().value() / dollar);
        if (usual.numbers().find(work.number("hours")).isPresent()) {
            figures.put(work.number("hours"), option.hours());
        }
        if (work.gains()) {
            option.gain().map(Option.Gain::normal).ifPresent(gain -> put(figures, work, gain));
        }
        return figures;
    }

    private static void put(Map<String, Double> figures, Work work, Normal gain) {
        figures.put(work.number("gain.mean"), gain.mean());
        figures.put(work.number("gain.sd"), gain.sd());
    }

    private static List<Option> entered(Known known) {
        return known.book().options().stream()
                .filter(option -> option.likely().currency().equals(known.currency()))
                .toList();
    }

    /** The whole question. */
    public Problem problem(Known known) {
        Catalogue catalogue = catalogue(known);
        FaultKeys keys = new FaultKeys(known.profile());
        EngineStates plain = EngineStates.of(accounts(known), keys, beside(known));
        Gains gains = new Gains(known.changes(), known.setupsById());
        OwnerSays owner = new OwnerSays(known.car(), catalogue, known.currency());
        EngineStates states =
                looksForACrack(catalogue, keys, plain) ? plain.withCrack(catalogue.number("chance.crack")) : plain;
        Bench bench = new Bench(catalogue, known.profile(), keys, states, gains, !owner.beforePurchase(), paid(known));
        Standing standing = standing(known, owner);
        TestList tests = new TestList(
                catalogue,
                prices,
                states,
                permitted(known, standing),
                known.profile().cylinders());
        return new Problem(
                known.currency(),
                owner.inputs(known.spent()),
                new Assumed(catalogue).assumptions(),
                power(known, catalogue),
                new FaultTable(catalogue, keys).of(states, readingsSpeak(known)),
                states.hidden(),
                new OptionList(bench, standing, gains).of(entered(known)),
                tests.of(known.health(), firstSteps(catalogue)),
                tests.healthNext(known.health()));
    }

    private static List<FaultSet.Likely> accounts(Known known) {
        return known.health()
                .faults()
                .posterior()
                .map(posterior -> posterior.likeliestSets(SHARE_ASKED, MOST_ASKED))
                .orElse(List.of());
    }

    private static Map<String, Double> beside(Known known) {
        Map<String, Double> beside = new TreeMap<>();
        for (EngineChance chance : known.health().faults().engineWide()) {
            if (BESIDE.contains(chance.key())) {
                beside.put(chance.key(), chance.probability());
            }
        }
        return beside;
    }

    /** A head comes off only where one is suspected. */
    private static boolean looksForACrack(Catalogue catalogue, FaultKeys keys, EngineStates states) {
        Set<String> underAHead = new java.util.HashSet<>(keys.heads());
        underAHead.addAll(Set.of("held-open", "gasket-neighbour"));
        return states.chanceOfAny(underAHead) >= catalogue.number("chance.suspect");
    }

    private static Set<String> paid(Known known) {
        return known.book().spent().stream().map(Spending::what).collect(Collectors.toSet());
    }

    private static Standing standing(Known known, OwnerSays owner) {
        boolean forbidden = LoadPoint.of(known.health()).stream().anyMatch(LoadPoint::forbidsRunning);
        boolean runs = known.car().runs().map(told -> told == Runs.YES).orElse(true);
        return new Standing(!owner.beforePurchase(), runs && !forbidden, forbidden, owner.partsWorthwhile());
    }

    private static Permitted permitted(Known known, Standing standing) {
        return new Permitted(known.car().access(), known.everRead(), standing.mayRun());
    }

    private static PowerNow power(Known known, Catalogue catalogue) {
        Optional<Double> high = known.car()
                .quantity(Fact.ELEVATION)
                .map(elevation -> elevation.si())
                .filter(metres -> metres >= catalogue.number("power.high-up"));
        if (known.presentBandKw().isPresent()) {
            double hp = Power.ofKilowatt(known.presentBandKw().getAsDouble()).horsepower();
            return new PowerNow(hp, false, high);
        }
        String fed = known.profile().fuel() == FuelSystem.CARBURETTOR ? "power.carburettor" : "power.injection";
        return new PowerNow(catalogue.number(fed) * known.profile().displacement() / LITRE, true, high);
    }

    private static Map<String, Double> readingsSpeak(Known known) {
        Map<String, Double> from = new LinkedHashMap<>();
        BESIDE.forEach(key -> from.put(key, SPOKEN_OF_BESIDE));
        if (known.health().faults().read()) {
            for (String key : List.of(
                    "small",
                    "held-open",
                    "head",
                    "gasket-neighbour",
                    "gasket-coolant",
                    "rings",
                    "rings-all",
                    "cam-timing")) {
                from.put(key, SPOKEN_OF);
            }
        }
        return from;
    }

    private static Map<String, Set<String>> firstSteps(Catalogue catalogue) {
        return catalogue.plans().stream()
                .filter(plan -> plan.firstTest().isPresent())
                .collect(Collectors.groupingBy(
                        plan -> plan.firstTest().orElseThrow(), Collectors.mapping(Plan::name, Collectors.toSet())));
    }
}
