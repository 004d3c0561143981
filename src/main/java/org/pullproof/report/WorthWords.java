package org.pullproof.report;

import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.units.Sentence;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.words.DecisionWords;
import org.pullproof.worth.decision.words.Part;

/** The paragraph of the decision, up to what to do for the summary, and what stands behind it for the page on money. */
record WorthWords(WorthFindings worth) {
    /** All of it. */
    Sentence whole() {
        return worth.sentence();
    }

    /** What to do, after a test that comes first. */
    Sentence decision() {
        return worth.tooEarly() ? whole() : run(parts().subList(0, afterTheAct()));
    }

    /** Why, what would have to be true for another option, what is not counted; may be empty. */
    Sentence reasons() {
        return worth.tooEarly() ? new Sentence("") : run(parts().subList(afterTheAct(), parts().size()));
    }

    private List<Part> parts() {
        return new DecisionWords(worth.weighing().answer()).parts();
    }

    private int afterTheAct() {
        return 1 + parts().stream().map(Part::kind).toList().indexOf(Part.Kind.ACT);
    }

    private static Sentence run(List<Part> parts) {
        return new Sentence(parts.stream().map(part -> part.sentence().marked()).collect(Collectors.joining(" ")));
    }
}
