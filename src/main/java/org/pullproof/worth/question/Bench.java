package org.pullproof.worth.question;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.engine.EngineProfile;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.decision.problem.Quote;
import org.pullproof.worth.trade.Catalogue;
import org.pullproof.worth.trade.JudgedNumber;
import org.pullproof.worth.trade.Work;

/** One engine as works are done on it: which of them fit, what they cost, gain and cure here. */
final class Bench {
    private final Catalogue catalogue;
    private final EngineProfile profile;
    private final FaultKeys keys;
    private final EngineStates states;
    private final Gains gains;
    private final Set<String> done;
    private final boolean owned;
    private final double dollar;
    private final String suspectedHead;

    /**
     * @param owned whether the car is bought
     * @param done words of works that are paid for already
     */
    Bench(
            Catalogue catalogue,
            EngineProfile profile,
            FaultKeys keys,
            EngineStates states,
            Gains gains,
            boolean owned,
            Set<String> done) {
        this.catalogue = catalogue;
        this.profile = profile;
        this.keys = keys;
        this.states = states;
        this.gains = gains;
        this.done = done.stream().map(Bench::plain).collect(Collectors.toUnmodifiableSet());
        this.owned = owned;
        this.dollar = catalogue.number("rate.dollar");
        this.suspectedHead = keys.heads().stream()
                .reduce((a, b) -> chance(Set.of(b)) > chance(Set.of(a)) ? b : a)
                .orElse(FaultKeys.HEAD);
    }

    private static String plain(String words) {
        return words.strip().toLowerCase(java.util.Locale.ROOT);
    }

    EngineStates states() {
        return states;
    }

    Catalogue catalogue() {
        return catalogue;
    }

    /** Faults of this engine that a key of the catalogue means: {@code head} the suspected one, {@code heads} all. */
    Set<String> meant(String key) {
        return switch (key) {
            case FaultKeys.HEAD -> Set.of(suspectedHead);
            case "heads" -> Set.copyOf(keys.heads());
            default -> Set.of(key);
        };
    }

    Set<String> meant(Set<String> all) {
        return all.stream().flatMap(key -> meant(key).stream()).collect(Collectors.toUnmodifiableSet());
    }

    private double chance(Set<String> faults) {
        return states.chanceOfAny(faults);
    }

    boolean suspects(Set<String> faults) {
        return chance(meant(faults)) >= catalogue.number("chance.suspect");
    }

    boolean felt(String fault) {
        return catalogue.faults().stream()
                .anyMatch(row -> row.felt() && row.key().equals(keys.row(fault)));
    }

    /** The works among these that fit the engine and are still to be done. */
    List<Work> left(List<String> works) {
        return works.stream().map(catalogue::work).filter(this::isLeft).toList();
    }

    private boolean isLeft(Work work) {
        boolean nothingMore = gains.measured(work) && work.cures().isEmpty() && !suspects(work.mayCure());
        return work.fits(profile.ignition(), profile.fuel(), keys.heads().size(), owned)
                && !done.contains(plain(work.words()))
                && !nothingMore
                && states.faults().containsAll(meant(work.when()));
    }

    CostLine line(Work work) {
        CostLine line = new CostLine(
                work.words(),
                work.kind(),
                quote(work),
                work.overrun(),
                number(work, "hours"),
                number(work, "weeks"),
                Optional.empty(),
                meant(work.when()));
        return work.find()
                .map(find -> line.ifFound(find, number(work, "chance")))
                .orElse(line);
    }

    private Quote quote(Work work) {
        return new Quote(dollar * number(work, "p10"), dollar * number(work, "p50"), dollar * number(work, "p90"));
    }

    /** 0 where the catalogue has no such number for a work: no hours, no weeks. */
    private double number(Work work, String what) {
        return catalogue
                .numbers()
                .find(work.number(what))
                .map(JudgedNumber::value)
                .orElse(0.0);
    }

    /** What power a work is expected to bring; nothing where its subject was measured. */
    Optional<Gain> gain(Work work) {
        return work.gains() && !gains.measured(work)
                ? Optional.of(
                        new Gain.Expected(work.words(), new Normal(number(work, "gain.mean"), number(work, "gain.sd"))))
                : Optional.empty();
    }

    Set<String> cures(Work work) {
        return meant(work.cures());
    }

    /** Chance that a work cures a fault. */
    double chanceToCure(Work work, String fault) {
        if (work.otherEngine() || cures(work).contains(fault)) {
            return 1;
        }
        return work.mayCure().stream()
                .filter(key -> meant(key).contains(fault))
                .mapToDouble(key -> number(work, "may-cure." + key))
                .findFirst()
                .orElse(0);
    }

    double hazard(Work otherEngine) {
        return number(otherEngine, "hazard");
    }
}
