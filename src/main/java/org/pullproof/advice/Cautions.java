package org.pullproof.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.health.TestKind;
import org.pullproof.tuneup.Step;

/**
 * The one home of caution sentences, by act. Every list ends with the sentence that gives way to the maker's manual and
 * licensed practice. The sentences are common practice, no source.
 */
public final class Cautions {
    private final Map<String, List<String>> byAct;
    private final String last;

    /**
     * @param byAct sentences by act: the key of a test, or {@code first-start}, {@code dyno-pull}, {@code change}, …
     * @param last the sentence that ends every list
     */
    public Cautions(Map<String, List<String>> byAct, String last) {
        this.byAct = Map.copyOf(byAct);
        this.last = last;
    }

    /**
     * The cautions of an act.
     *
     * @throws IllegalArgumentException if the act is not known: no act goes without its cautions unnoticed
     */
    public List<String> of(String act) {
        return ended(Optional.ofNullable(byAct.get(act))
                .orElseThrow(() -> new IllegalArgumentException("There are no cautions for \"" + act + "\"")));
    }

    public List<String> of(TestKind test) {
        return of(test.key());
    }

    public List<String> of(Step step) {
        return ended(step.cautions());
    }

    /** The sentence that ends every list; alone where nothing is done to the car. */
    public String last() {
        return last;
    }

    private List<String> ended(List<String> sentences) {
        List<String> ended = new ArrayList<>(sentences);
        ended.add(last);
        return List.copyOf(ended);
    }
}
