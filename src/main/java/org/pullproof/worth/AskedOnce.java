package org.pullproof.worth;

import org.jspecify.annotations.Nullable;
import org.pullproof.worth.decision.Progress;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.question.Known;
import org.pullproof.worth.question.Questioner;
import org.pullproof.worth.trade.Catalogue;

/** Weighs what is known when asked. */
final class AskedOnce implements Weighing {
    private final Questioner questioner;
    private final Known known;
    private final Answers answers;
    private @Nullable Problem problem;

    AskedOnce(Questioner questioner, Known known, Answers answers) {
        this.questioner = questioner;
        this.known = known;
        this.answers = answers;
    }

    @Override
    public Catalogue catalogue() {
        return questioner.catalogue(known);
    }

    @Override
    public synchronized Problem problem() {
        Problem asked = problem == null ? questioner.problem(known) : problem;
        problem = asked;
        return asked;
    }

    @Override
    public Answer answer(Progress progress) {
        return answers.to(problem(), progress);
    }
}
