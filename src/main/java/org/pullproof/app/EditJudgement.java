package org.pullproof.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Edit;
import org.pullproof.session.Judgement;
import org.pullproof.session.Problem;
import org.pullproof.session.TradeConstant;

/** Puts a session's own values of judgement in the place of the program's, or goes back to these: all of them or none. */
public final class EditJudgement {
    private final SessionDesk desk;
    private final TradeConstants constants;

    public EditJudgement(SessionDesk desk, TradeConstants constants) {
        this.desk = desk;
        this.constants = constants;
    }

    /** Every constant that the program judges by. */
    public List<TradeConstant> constants() {
        return constants.all();
    }

    /**
     * @param values by name; an empty one goes back to the program's own
     * @throws BadFileException with every value that is wrong; nothing is then changed
     */
    public OpenSession edit(OpenSession open, Map<String, Optional<Double>> values) throws BadFileException {
        Judgement next = open.session().judgement().with(values);
        List<Problem> problems = constants.problems(next);
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        Map<String, Optional<Double>> named = new LinkedHashMap<>(values);
        String name = "Judge by another " + String.join(", ", named.keySet());
        return desk.edit(
                open,
                new Edit(
                        name,
                        session -> session.withJudgement(session.judgement().with(named))));
    }

    /** Goes back to the program's own values throughout. */
    public OpenSession reset(OpenSession open) throws BadFileException {
        return desk.edit(
                open, new Edit("Judge by the program's own values", now -> now.withJudgement(Judgement.own())));
    }
}
