package org.pullproof.cli;

import java.util.List;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Remark;

/** Prints the answer whether more money is worth it, for people. */
record WorthPrinter(Output output, AnswerRows rows, WorthFindings findings) {
    private static final int MOST_FLIPS = 6;

    void print(Sentence sentence) {
        output.print(sentence.plain());
        output.print("");
        output.print(options());
        rows.answer().options().stream()
                .filter(row -> !row.policy().isEmpty())
                .forEach(row -> output.print(row.name() + ": " + String.join("; ", rows.policy(row)) + "."));
        purchase();
        under("What would flip it", flips());
        under("Tests before deciding", tests());
        done();
        remarks();
    }

    private Answer answer() {
        return rows.answer();
    }

    private Table options() {
        Table table = new Table()
                .words("option")
                .figures("better off by")
                .words("10 to 90 of 100")
                .words("money, 10 · 50 · 90 of 100")
                .figures("power after")
                .figures("over budget of 100")
                .words("");
        answer().options().forEach(row -> table.row(cells(row)));
        return table;
    }

    private String[] cells(OptionAnswer row) {
        return new String[] {
            row.name(),
            rows.net(row),
            rows.netEnds(row),
            rows.cost(row),
            rows.power(row),
            rows.overBudget(row),
            rows.detail(row)
        };
    }

    private void purchase() {
        answer().purchase().ifPresent(purchase -> {
            output.print("");
            output.print(
                    "Highest price: " + rows.money(purchase.rounded()) + " (± " + rows.money(purchase.noise()) + ").");
            purchase.findings().forEach(finding -> output.print("  " + rows.finding(finding) + "."));
        });
    }

    private Table flips() {
        Table table = new Table().words("input").figures("now").figures("from").words("then");
        answer().flips().stream()
                .limit(MOST_FLIPS)
                .forEach(flip -> table.row(
                        rows.input(flip), rows.value(flip, flip.now()), rows.value(flip, flip.at()), flip.becomes()));
        return table;
    }

    private Table tests() {
        Table table = new Table()
                .words("test")
                .figures("takes")
                .figures("costs")
                .figures("is worth")
                .words("");
        answer().tests()
                .forEach(test -> table.row(
                        test.test().name(),
                        rows.minutes(test),
                        rows.money(test.cost()),
                        rows.money(test.value().value()),
                        rows.verdict(test)));
        return table;
    }

    private void under(String title, Table table) {
        if (!table.isEmpty()) {
            output.print("");
            output.print(title + ":");
            output.print(table);
        }
    }

    private void done() {
        Table table = new Table().words("change").figures("cost").words("cost per hp");
        findings.done()
                .forEach(paid -> table.row(
                        paid.change(),
                        Figures.money(paid.cost()),
                        paid.costPerHp().words()));
        under("Changes that were paid for", table);
    }

    private void remarks() {
        output.print("");
        output.print("Spent, and not counted: " + Figures.money(findings.spent()) + ".");
        List<String> bends = answer().remarks().stream().map(Remark::words).toList();
        output.print(bends);
        output.print(findings.remarks());
        output.print("Costs and chances are judgement unless measured or entered.");
    }
}
