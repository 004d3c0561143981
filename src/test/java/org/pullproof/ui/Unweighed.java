package org.pullproof.ui;

import org.pullproof.files.MoneyCatalogueFile;
import org.pullproof.worth.Weighing;
import org.pullproof.worth.decision.Progress;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.trade.Catalogue;

/** A weighing that nobody may ask for: what does not show the answer must not wait for it. */
final class Unweighed implements Weighing {
    @Override
    public Catalogue catalogue() {
        return MoneyCatalogueFile.read();
    }

    @Override
    public Problem problem() {
        throw new IllegalStateException("Nobody looks at the answer here");
    }

    @Override
    public Answer answer(Progress progress) {
        throw new IllegalStateException("Nobody looks at the answer here");
    }
}
