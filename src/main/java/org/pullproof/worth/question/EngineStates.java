package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.pullproof.health.faults.FaultSet;
import org.pullproof.worth.decision.problem.HiddenState;

/**
 * The hidden states of one engine: the likeliest merged sets of faults, what is left as one state, and a crack beside each where an
 * option looks for one (worth.md 1).
 *
 * @param states their chances add up to 1
 */
record EngineStates(List<State> states) {
    private static final double SHARE_KEPT = 0.995;
    private static final int MOST_KEPT = 40;
    private static final String CRACK = "crack";

    EngineStates {
        states = List.copyOf(states);
    }

    /**
     * One state with the complete accounts of the engine that it merges, as far as they are told apart.
     *
     * @param faults keys of its faults
     * @param chance its chance
     * @param accounts with their own chances; empty where nothing was weighed
     */
    record State(Set<String> faults, double chance, List<FaultSet.Likely> accounts) {
        State {
            faults = Set.copyOf(faults);
            accounts = List.copyOf(accounts);
        }

        State with(String fault, double share) {
            Set<String> more = new TreeSet<>(faults);
            more.add(fault);
            return new State(more, chance * share, accounts);
        }

        State times(double share) {
            return new State(faults, chance * share, accounts);
        }
    }

    /**
     * @param accounts complete accounts of the engine, likeliest first; what they lack to 1 is nobody's
     * @param beside chances of what no reading of a cylinder speaks of, by fault
     */
    static EngineStates of(List<FaultSet.Likely> accounts, FaultKeys keys, Map<String, Double> beside) {
        List<State> merged = merged(accounts, keys);
        for (Map.Entry<String, Double> fault : beside.entrySet()) {
            merged = crossed(merged, fault.getKey(), fault.getValue());
        }
        return new EngineStates(kept(merged));
    }

    private static List<State> merged(List<FaultSet.Likely> accounts, FaultKeys keys) {
        Map<Set<String>, List<FaultSet.Likely>> bySet = new LinkedHashMap<>();
        accounts.forEach(account -> bySet.computeIfAbsent(keys.of(account.set()), set -> new ArrayList<>())
                .add(account));
        List<State> merged = new ArrayList<>();
        bySet.forEach((set, members) -> merged.add(
                new State(set, members.stream().mapToDouble(FaultSet.Likely::p).sum(), members)));
        return merged;
    }

    private static List<State> crossed(List<State> states, String fault, double chance) {
        return states.stream()
                .flatMap(state -> List.of(state.times(1 - chance), state.with(fault, chance)).stream())
                .toList();
    }

    /** The likeliest until enough is covered; the rest, and what no account names, is one fault that the readings do not name. */
    private static List<State> kept(List<State> states) {
        List<State> likeliest = states.stream()
                .sorted(Comparator.comparingDouble(State::chance).reversed())
                .toList();
        List<State> kept = new ArrayList<>();
        double sum = 0;
        for (State state : likeliest) {
            if (sum >= SHARE_KEPT || kept.size() == MOST_KEPT) {
                break;
            }
            kept.add(state);
            sum += state.chance();
        }
        return withRest(kept, Math.max(0, 1 - sum));
    }

    private static List<State> withRest(List<State> kept, double rest) {
        Set<String> other = Set.of(FaultKeys.OTHER);
        List<State> all = new ArrayList<>();
        double left = rest;
        for (State state : kept) {
            boolean same = state.faults().equals(other);
            all.add(same ? new State(other, state.chance() + rest, state.accounts()) : state);
            left = same ? 0 : left;
        }
        if (left > 0) {
            all.add(new State(other, left, List.of()));
        }
        return all;
    }

    /** A crack beside each state, with this chance. */
    EngineStates withCrack(double chance) {
        return new EngineStates(crossed(states, CRACK, chance));
    }

    /** Chance that at least one of these faults is there. */
    double chanceOfAny(Set<String> faults) {
        return states.stream()
                .filter(state -> state.faults().stream().anyMatch(faults::contains))
                .mapToDouble(State::chance)
                .sum();
    }

    /** All faults that may be there. */
    Set<String> faults() {
        Set<String> faults = new TreeSet<>();
        states.forEach(state -> faults.addAll(state.faults()));
        return faults;
    }

    /** As the decision engine takes them. */
    List<HiddenState> hidden() {
        return states.stream()
                .map(state -> new HiddenState(state.faults(), Math.min(1, state.chance())))
                .toList();
    }
}
