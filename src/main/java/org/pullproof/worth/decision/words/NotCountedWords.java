package org.pullproof.worth.decision.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Shut;
import org.pullproof.worth.decision.problem.Budget;
import org.pullproof.worth.decision.problem.PowerNow;

/** Part 5: money spent; what the cap shuts out; that hp are corrected ones or estimated. */
final class NotCountedWords {
    private static final int NAMED = 3;
    private static final double HUNDRED = 100;

    private final Answer answer;
    private final Rounded rounded;

    NotCountedWords(Answer answer) {
        this.answer = answer;
        this.rounded = new Rounded(answer.problem().currency());
    }

    Optional<String> sentence() {
        List<String> clauses = new ArrayList<>();
        double spent = answer.problem().owner().spent();
        if (spent > 0) {
            clauses.add(rounded.typed(spent) + " already spent is not counted");
        }
        answer.problem().owner().budget().flatMap(this::cap).ifPresent(clauses::add);
        power().ifPresent(clauses::add);
        return Optional.of(String.join("; ", clauses))
                .filter(words -> !words.isEmpty())
                .map(words -> Names.capital(words) + ".");
    }

    private Optional<String> cap(Budget budget) {
        List<OptionAnswer> out = answer.options().stream()
                .filter(row -> !row.allowed())
                .limit(NAMED)
                .toList();
        if (out.isEmpty()) {
            return answer.shut().map(shut -> "the cap of " + rounded.typed(budget.cap()) + " costs " + costs(shut));
        }
        List<String> cases = out.stream()
                .map(row -> Long.toString(Math.round(HUNDRED * row.overBudget())))
                .toList();
        List<String> names = out.stream().map(row -> "\"" + row.name() + "\"").toList();
        return Optional.of(Names.joined(names) + (names.size() == 1 ? " exceeds" : " exceed") + " the cap of "
                + rounded.typed(budget.cap()) + " in " + Names.joined(cases) + " of 100 cases"
                + answer.shut().map(shut -> ", which costs " + costs(shut)).orElse(""));
    }

    private String costs(Shut shut) {
        return "about " + rounded.sum(shut.costsOfCap()) + " against \"" + shut.option() + "\"";
    }

    private Optional<String> power() {
        PowerNow power = answer.problem().power();
        Optional<String> high = power.elevationMetres()
                .map(metres -> "gains are in corrected hp, and fewer are felt at " + Figures.number(metres, 0)
                        + Figures.NO_BREAK_SPACE + "m");
        return power.estimated() ? Optional.of("the power now is estimated from the displacement") : high;
    }
}
