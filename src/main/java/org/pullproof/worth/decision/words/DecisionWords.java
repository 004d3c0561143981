package org.pullproof.worth.decision.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.units.Sentence;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Remark;
import org.pullproof.worth.decision.problem.MoneyTest;

/**
 * The paragraph that an answer is said in (worth.md 3). Never says that anything is certain, and never gives the chance to be best as
 * the reason: an option that is often slightly better and sometimes much worse can have the highest.
 */
public final class DecisionWords {
    private final Answer answer;

    public DecisionWords(Answer answer) {
        this.answer = answer;
    }

    /**
     * The parts in their order: a safety gate, then what to find out before what to do when a test is worth doing first. Where only a
     * high worth of a hp makes the answer, that comes before all else.
     */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        add(parts, Part.Kind.GATE, gate());
        Optional<String> turnsOn = new TurnWords(answer).sentence();
        TestWords tests = new TestWords(answer);
        Optional<String> findOut = tests.sentence();
        if (isDear()) {
            add(parts, Part.Kind.TURNS_ON, turnsOn);
        }
        if (tests.isFirst()) {
            add(parts, Part.Kind.FIND_OUT, findOut);
        }
        add(parts, Part.Kind.ACT, Optional.of(new ActWords(answer).sentence()));
        add(parts, Part.Kind.WHY, new WhyWords(answer).sentence());
        if (!isDear()) {
            add(parts, Part.Kind.TURNS_ON, turnsOn);
        }
        if (!tests.isFirst()) {
            add(parts, Part.Kind.FIND_OUT, findOut);
        }
        add(parts, Part.Kind.NOT_COUNTED, new NotCountedWords(answer).sentence());
        return parts;
    }

    /** All parts in one run. */
    public Sentence paragraph() {
        return new Sentence(
                parts().stream().map(part -> part.sentence().marked()).collect(Collectors.joining(" ")));
    }

    private static void add(List<Part> parts, Part.Kind kind, Optional<String> words) {
        words.ifPresent(sentence -> parts.add(new Part(kind, new Sentence(sentence))));
    }

    private boolean isDear() {
        return answer.remarks().stream().anyMatch(remark -> remark.kind() == Remark.Kind.VALUE_PER_HP_HIGH);
    }

    /** Tests of the gate come first whatever they are worth in money. */
    private Optional<String> gate() {
        List<String> names = answer.problem().tests().stream()
                .filter(MoneyTest::gate)
                .map(test -> Names.bold(test.name()))
                .toList();
        return Optional.of(names)
                .filter(some -> !some.isEmpty())
                .map(some -> "First " + Names.joined(some)
                        + ", whatever it is worth in money: it says whether the engine may be run.");
    }
}
