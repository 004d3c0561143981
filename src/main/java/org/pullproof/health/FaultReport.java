package org.pullproof.health;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.health.FaultFindings.EngineChance;
import org.pullproof.health.FaultFindings.PairChance;
import org.pullproof.health.FaultFindings.ProposedTest;
import org.pullproof.health.compression.SeaLevel;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.nexttest.Circumstances;
import org.pullproof.health.nexttest.NextTest;
import org.pullproof.health.nexttest.TestAdvisor;
import org.pullproof.health.nexttest.TestCosts;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;

/** Lays out what the fault model found, for whoever shows it. */
final class FaultReport {
    private static final double LEAST_SHOWN = 0.005;
    private static final double MINUTES_AN_HOUR = 60;

    private final Evidence evidence;
    private final FaultJudge judge;
    private final FaultPosterior posterior;
    private final FaultConstants constants;
    private final CandidateWords candidateWords;

    FaultReport(Evidence evidence, FaultJudge judge, FaultConstants constants) {
        this.evidence = evidence;
        this.judge = judge;
        this.posterior = judge.posterior();
        this.constants = constants;
        this.candidateWords = new CandidateWords(judge.explainer(), new PartWords(evidence), constants.verdicts());
    }

    FaultFindings findings(Car car, Set<TestKind> everRead, TestCosts costs) {
        List<ProposedTest> tests = new TestAdvisor(posterior, constants, costs, circumstances(car, everRead))
                .proposals(judge.sound() || judge.notSound()).stream()
                        .map(test -> new ProposedTest(test, why(test)))
                        .toList();
        return new FaultFindings(
                posterior.sound(),
                judge.anythingRead(),
                evidence.cylinders().stream().map(this::cylinder).toList(),
                engineWide(),
                pairs(),
                tests,
                tests.isEmpty() ? noTest() : "",
                Optional.of(posterior));
    }

    /** Said where no test is proposed; of an engine known to be unsound the repair is what tells more. */
    private String noTest() {
        return judge.notSound()
                ? "No further test of the cylinders would change what to do: the first step of the repair tells the rest."
                : "No further test of the cylinders would change what to do.";
    }

    private static Circumstances circumstances(Car car, Set<TestKind> everRead) {
        double anHour = car.money(Fact.HOUR_PRICE).map(Money::value).orElse(0.0);
        return new Circumstances(car.access(), everRead, anHour / MINUTES_AN_HOUR);
    }

    static Set<TestKind> everRead(List<Reading> readings) {
        Set<TestKind> tests = EnumSet.noneOf(TestKind.class);
        readings.forEach(reading -> tests.add(reading.test()));
        return tests;
    }

    private CylinderChances cylinder(int number) {
        List<CandidateChance> candidates = posterior.candidates(number).entrySet().stream()
                .filter(entry -> entry.getValue() >= LEAST_SHOWN)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(entry -> candidate(number, entry.getKey(), entry.getValue()))
                .toList();
        return new CylinderChances(number, judge.called(number), candidates);
    }

    /** Only where something is held against a cylinder is it told what speaks for and against. */
    private CandidateChance candidate(int cylinder, Candidate candidate, double p) {
        CandidateWords.Lists lists = judge.clear(cylinder)
                ? new CandidateWords.Lists(List.of(), List.of())
                : candidateWords.of(cylinder, candidate);
        return new CandidateChance(candidate.fault(), FaultWords.name(candidate), p, lists.fits(), lists.against());
    }

    private List<EngineChance> engineWide() {
        List<EngineChance> chances = new ArrayList<>();
        for (EngineState state : EngineState.values()) {
            if (state != EngineState.OK) {
                chances.add(new EngineChance(state.key(), FaultWords.name(state), posterior.p(state)));
            }
        }
        chances.add(new EngineChance(
                Fault.GASKET_COOLANT.key(),
                "gasket or crack to the coolant, in any cylinder",
                posterior.anywhere(Fault.GASKET_COOLANT)));
        chances.add(beside("bottom-end", "bottom end worn"));
        chances.add(beside("exhaust-restricted", "exhaust restricted"));
        chances.add(beside("manifold-leak", "manifold draws false air"));
        altitudeOnly().ifPresent(chances::add);
        chances.sort(Comparator.comparingDouble(EngineChance::probability).reversed());
        return chances;
    }

    /** What no reading of a cylinder speaks of: prior odds times the ratios of its signs. */
    private EngineChance beside(String key, String words) {
        double prior = constants.priors().wholeEngine().getOrDefault(key, 0.0);
        double odds = prior / (1 - prior) * new SignOdds(evidence, constants.signs(), List.of()).named(key);
        return new EngineChance(key, words, odds / (1 + odds));
    }

    /** Thin air explains low figures where all is sound. */
    private Optional<EngineChance> altitudeOnly() {
        double station = evidence.weighedDry().values().stream()
                .flatMapToDouble(reading -> evidence.station(reading).stream())
                .average()
                .orElse(SeaLevel.PRESSURE);
        FaultConstants.Verdicts limits = constants.verdicts();
        boolean thin = station < limits.thinAirKpa() * 1e3
                && SeaLevel.restated(1, station) > 1 + limits.thinAirPercent() / 100;
        return thin && judge.sound()
                ? Optional.of(
                        new EngineChance("altitude-only", "thin air alone explains low compression", posterior.sound()))
                : Optional.empty();
    }

    private List<PairChance> pairs() {
        return posterior.pairs().entrySet().stream()
                .filter(entry -> entry.getValue() >= LEAST_SHOWN)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(entry -> new PairChance(entry.getKey(), entry.getValue()))
                .toList();
    }

    private String why(NextTest test) {
        String bits = Figures.number(test.bits(), 2) + " bits";
        String worth = "$" + Figures.number(test.value(), 0) + " to the decision (judgement)";
        return switch (test.reason()) {
            case WORTH_ITS_COST -> Phrase.capital(who(test)) + ": worth " + worth + ", " + bits + ".";
            case TELLS_MOST ->
                Phrase.capital(who(test)) + ": tells most, " + bits + ", but is worth only " + worth + ".";
            case SETTLES_MOST -> Phrase.capital(who(test)) + ": settles most a minute, " + bits + ".";
        };
    }

    private static String who(NextTest test) {
        return Phrase.cylinders(test.cylinders());
    }
}
