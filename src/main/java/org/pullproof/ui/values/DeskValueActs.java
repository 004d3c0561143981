package org.pullproof.ui.values;

import java.util.Map;
import java.util.Optional;
import org.pullproof.app.EditJudgement;
import org.pullproof.ui.shell.Act;

/** Edits values of judgement on the disk. */
public record DeskValueActs(EditJudgement judgement) implements ValueActs {
    @Override
    public Act edit(Map<String, Optional<Double>> values) {
        return open -> judgement.edit(open, values);
    }

    @Override
    public Act reset() {
        return judgement::reset;
    }
}
