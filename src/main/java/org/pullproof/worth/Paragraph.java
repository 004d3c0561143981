package org.pullproof.worth;

import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.worth.decision.answer.Answer;

/** The answer in a few sentences. */
public final class Paragraph {
    private Paragraph() {}

    public static Sentence of(Answer answer, Figures figures) {
        AnswerRows rows = new AnswerRows(answer, figures);
        return new Sentence("**" + answer.best().option().firstAct() + "**: " + rows.net(answer.best()));
    }
}
