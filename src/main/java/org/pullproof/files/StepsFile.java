package org.pullproof.files;

import java.util.List;
import java.util.function.UnaryOperator;
import org.pullproof.tuneup.StepGraph;

/** The steps of a tune-up as a file of their own, to be edited for a car. */
public final class StepsFile {
    private final UnaryOperator<List<String>> cautions;

    /**
     * @param trade knows the cautions that a word stands for
     */
    public StepsFile(TradeFiles trade) {
        this.cautions = trade::resolved;
    }

    /**
     * @throws BadFileException naming file and place of what is wrong
     */
    public StepGraph read(String name, byte[] bytes) throws BadFileException {
        return new StepGraphJson(cautions).read(JsonPlace.parse(name, bytes));
    }

    /** The bytes of such a file. */
    public byte[] bytes(StepGraph steps) {
        return JsonText.of(StepGraphJson.write(steps));
    }
}
