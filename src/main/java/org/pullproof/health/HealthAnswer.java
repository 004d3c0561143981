package org.pullproof.health;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.compression.Levels;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;

/** The answer to "is this engine sound?" in one sentence. */
final class HealthAnswer {
    private final List<CylinderFindings> cylinders;
    private final List<Ground> grounds;
    private final List<String> notLookedFor;

    HealthAnswer(List<CylinderFindings> cylinders, List<Ground> grounds, List<String> notLookedFor) {
        this.cylinders = cylinders;
        this.grounds = grounds;
        this.notLookedFor = notLookedFor;
    }

    Sentence of(Verdict verdict) {
        return new Sentence("**" + verdict.words() + ".** " + Phrase.capital(because(verdict)) + ".");
    }

    private String because(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> sound();
            case NOT_SOUND -> failing();
            case NOT_SETTLED -> unsettled();
        };
    }

    private String sound() {
        List<String> clauses = new ArrayList<>();
        agreement(Phrase.cylinders(
                        level().stream().map(CylinderFindings::number).toList()))
                .ifPresent(clauses::add);
        clauses.addAll(byWords(State.IN_DOUBT));
        clauses.addAll(clauses(Ground.Weight.SPEAKS_FOR));
        if (!notLookedFor.isEmpty()) {
            clauses.add(Phrase.list(notLookedFor) + " not looked for");
        }
        return String.join("; ", clauses);
    }

    private String failing() {
        List<String> clauses = new ArrayList<>(clauses(Ground.Weight.FAILS));
        if (clauses.isEmpty()) {
            clauses.addAll(byWords(State.LOW));
        }
        others().ifPresent(clauses::add);
        return String.join("; ", clauses);
    }

    private String unsettled() {
        List<String> clauses = new ArrayList<>(byWords(State.IN_DOUBT));
        clauses.addAll(byWords(State.NOT_COMPARABLE));
        clauses.addAll(clauses(Ground.Weight.DOUBTS));
        others().ifPresent(clauses::add);
        if (clauses.isEmpty() && cylinders.stream().allMatch(c -> c.state() == State.NOT_MEASURED)) {
            clauses.add("No cylinder has been measured");
        }
        List<String> lacking = clauses(Ground.Weight.LACKS);
        if (!lacking.isEmpty()) {
            clauses.add(lacking.get(0));
        }
        return String.join("; ", clauses);
    }

    private List<String> clauses(Ground.Weight weight) {
        return grounds.stream()
                .filter(ground -> ground.weight() == weight)
                .map(Ground::clause)
                .filter(clause -> !clause.isEmpty())
                .toList();
    }

    /** One clause for the cylinders that stand alike: "cylinders 2 and 3 are low". */
    private List<String> byWords(State state) {
        Map<String, List<Integer>> alike = new LinkedHashMap<>();
        cylinders.stream()
                .filter(cylinder -> cylinder.state() == state)
                .forEach(cylinder -> alike.computeIfAbsent(cylinder.words(), words -> new ArrayList<>())
                        .add(cylinder.number()));
        List<String> clauses = new ArrayList<>();
        alike.forEach((words, numbers) ->
                clauses.add(Phrase.cylinders(numbers) + (numbers.size() == 1 ? " is " : " are ") + words));
        return clauses;
    }

    private List<CylinderFindings> level() {
        return cylinders.stream()
                .filter(cylinder ->
                        cylinder.state() == State.LEVEL && cylinder.dry().isPresent())
                .toList();
    }

    /** "the other seven agree within 5 %", or all of them where none stands apart. */
    private Optional<String> others() {
        List<Integer> level = level().stream().map(CylinderFindings::number).toList();
        if (level.isEmpty()) {
            return Optional.empty();
        }
        if (level.size() == cylinders.size()) {
            return agreement("all " + Phrase.count(level.size()));
        }
        boolean allMeasured = cylinders.stream().noneMatch(cylinder -> cylinder.state() == State.NOT_MEASURED);
        return agreement(allMeasured ? "the other " + Phrase.count(level.size()) : Phrase.cylinders(level));
    }

    /** Empty with fewer than two level cylinders. */
    private Optional<String> agreement(String who) {
        return Levels.of(level().stream()
                        .flatMap(cylinder -> cylinder.dry().stream())
                        .map(dry -> dry.si())
                        .toList())
                .map(levels -> who + " agree within " + Figures.percent(Math.ceil(levels.spreadPercent()), 0));
    }
}
