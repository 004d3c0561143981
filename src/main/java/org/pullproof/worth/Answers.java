package org.pullproof.worth;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.pullproof.worth.decision.Decision;
import org.pullproof.worth.decision.Progress;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;

/** The answers last given, so that the same question, put again after an edit that does not bear on money, costs nothing. */
final class Answers {
    private static final int KEPT = 4;

    private final Decision decision;
    private final Map<Problem, Answer> given = new LinkedHashMap<>();

    Answers(Decision decision) {
        this.decision = decision;
    }

    Answer to(Problem problem, Progress progress) {
        Optional<Answer> before = given(problem);
        if (before.isPresent()) {
            return before.get();
        }
        Answer answer = decision.answer(problem, progress);
        keep(problem, answer);
        return answer;
    }

    private synchronized Optional<Answer> given(Problem problem) {
        return Optional.ofNullable(given.get(problem));
    }

    private synchronized void keep(Problem problem, Answer answer) {
        given.put(problem, answer);
        if (given.size() > KEPT) {
            given.remove(given.keySet().iterator().next());
        }
    }
}
