package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.changes.Call;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.ChangeLedger.AgainstPresent;
import org.pullproof.changes.JudgedChange;
import org.pullproof.engine.Setup;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.trade.Work;

/**
 * What the pulls say of power: setups better than the present one, and which works have no default gain left because their subject was
 * measured (worth.md 1). What stands in the present setup is in its power already.
 */
final class Gains {
    /** More ways back than this are not offered. */
    private static final int MOST = 3;

    private final ChangeLedger ledger;
    private final Map<String, Setup> setups;

    Gains(ChangeLedger ledger, Map<String, Setup> setups) {
        this.ledger = ledger;
        this.setups = setups;
    }

    /**
     * A setup that measured better than the present one.
     *
     * @param name of the setup
     * @param gain as measured
     * @param proved whether the pulls call it a gain
     */
    record Better(String name, Gain.Measured gain, boolean proved) {}

    /** The best first. Spoiled comparisons are not used. */
    List<Better> better() {
        return ledger.againstPresent().stream()
                .filter(found -> found.call() != Call.SPOILED && found.estimate() > 0 && found.standardError() > 0)
                .sorted(Comparator.comparingDouble(AgainstPresent::estimate).reversed())
                .limit(MOST)
                .map(this::better)
                .toList();
    }

    private Better better(AgainstPresent found) {
        String name = name(found.setup());
        return new Better(
                name,
                new Gain.Measured("setup " + name, found.estimate(), found.standardError(), found.degrees()),
                found.call() == Call.GAIN);
    }

    private String name(String id) {
        return Optional.ofNullable(setups.get(id)).map(Setup::name).orElse(id);
    }

    /** Whether anything was pulled that counts. */
    boolean anyPulls() {
        return ledger.degreesOfFreedom() > 0;
    }

    /** Whether a change or a sweep was judged that is about the same as a work. */
    boolean measured(Work work) {
        return subjects().stream().anyMatch(work::isAbout);
    }

    private List<String> subjects() {
        List<String> subjects = new ArrayList<>();
        ledger.sweeps().forEach(sweep -> subjects.add(sweep.factor()));
        ledger.changes().stream()
                .filter(change -> change.call() != Call.SPOILED)
                .flatMap(Gains::words)
                .forEach(subjects::add);
        return subjects;
    }

    private static Stream<String> words(JudgedChange judged) {
        return Stream.concat(Stream.of(judged.name()), judged.change().map(Change::what).stream());
    }
}
