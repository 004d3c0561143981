package org.pullproof.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.units.Figures;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.WorthFindings.CostPerHp;
import org.pullproof.worth.WorthFindings.Paid;
import org.pullproof.worth.WorthFindings.Row;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what money has bought and what more of it would. */
@Command(
        name = "worth",
        description =
                "Tells what one horsepower cost where that is established, what is spent, and what could be next.",
        footer = {
            "",
            "A spending is WHAT=MONEY. An option is NAME=LOW/LIKELY/HIGH, then its hours and its gain if known:",
            "\"cold-air duct=60USD/85USD/120USD,2h,0/1/2%%\".",
            "",
            "Example: pullproof worth grey-coupe --spend \"jets=18USD\""
        })
final class WorthCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(names = "--spend", paramLabel = "WHAT=MONEY", description = "Enter something that is paid; repeatable.")
    private List<String> spend = List.of();

    @Option(
            names = "--option",
            paramLabel = "NAME=COSTS",
            description = "Enter something that could be paid for; repeatable.")
    private List<String> options = List.of();

    @Mixin
    private Output output;

    WorthCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Figures figures = output.figures(tools);
        WorthFindings findings = tools.appraise().of(edited(), figures).worth();
        if (output.json()) {
            output.print(json(findings));
        } else {
            print(findings);
        }
        return Output.DONE;
    }

    private OpenSession edited() throws Exception {
        List<Spending> paid = spend.stream()
                .map(text -> MoneyArguments.spending(text, LocalDate.now(ZoneId.systemDefault())))
                .toList();
        List<org.pullproof.worth.Option> offered =
                options.stream().map(MoneyArguments::option).toList();
        OpenSession open = tools.desk().open(session);
        for (Spending spending : paid) {
            open = tools.recordMoney().spend(open, spending);
        }
        for (org.pullproof.worth.Option option : offered) {
            open = tools.recordMoney().offer(open, option);
        }
        return open;
    }

    private static Json json(WorthFindings findings) {
        Json json = new Json()
                .put("currency", findings.currency())
                .put("sentence", findings.answer().plain())
                .put("notCounted", findings.spent().value());
        findings.budgetLeft().ifPresent(left -> json.put("budgetLeft", left.value()));
        return json.put(
                        "options",
                        findings.options().stream().map(WorthCommand::json).toList())
                .put("done", findings.done().stream().map(WorthCommand::json).toList())
                .put("remarks", findings.remarks());
    }

    private static Json json(Row row) {
        org.pullproof.worth.Option option = row.option();
        Json json = new Json()
                .put("name", option.name())
                .put("costP10", option.low().value())
                .put("costP50", option.likely().value())
                .put("costP90", option.high().value())
                .put("hours", option.hours())
                .put("judgement", option.judgement())
                .put("overBudget", row.overBudget());
        row.gainHp()
                .ifPresent(gain -> json.put("gainLowHp", gain.low())
                        .put("gainLikelyHp", gain.likely())
                        .put("gainHighHp", gain.high()));
        return json.put("costPerHp", costPerHp(row.costPerHp()));
    }

    private static Json json(Paid paid) {
        return new Json()
                .put("change", paid.change())
                .put("cost", paid.cost().value())
                .put("costPerHp", costPerHp(paid.costPerHp()));
    }

    private static Json costPerHp(CostPerHp cost) {
        return new Json()
                .put("low", cost.low())
                .put("likely", cost.likely())
                .put("high", cost.high())
                .put("words", cost.words());
    }

    private void print(WorthFindings findings) {
        output.print(findings.answer().plain());
        output.print("Spent, and not counted: " + Figures.money(findings.spent()) + ".");
        findings.budgetLeft().ifPresent(left -> output.print("Left of the budget: " + Figures.money(left) + "."));
        output.print("");
        output.print(optionTable(findings));
        if (!findings.done().isEmpty()) {
            output.print("");
            output.print(doneTable(findings));
        }
        findings.remarks().forEach(output::print);
    }

    private static Table optionTable(WorthFindings findings) {
        Table table = new Table()
                .words("could be next")
                .words("cost, low · likely · high")
                .figures("own hours")
                .words("cost per hp")
                .words("");
        findings.options().forEach(row -> table.row(cells(row)));
        return table;
    }

    private static String[] cells(Row row) {
        org.pullproof.worth.Option option = row.option();
        String costs = Figures.money(option.low()) + " · " + Figures.money(option.likely()) + " · "
                + Figures.money(option.high());
        return new String[] {
            option.name(),
            costs,
            Figures.number(option.hours(), 1),
            row.costPerHp().words(),
            (option.judgement() ? "judgement" : "entered") + (row.overBudget() ? ", over the budget" : "")
        };
    }

    private static Table doneTable(WorthFindings findings) {
        Table table = new Table().words("done").figures("cost").words("cost per hp");
        findings.done()
                .forEach(paid -> table.row(
                        paid.change(),
                        Figures.money(paid.cost()),
                        paid.costPerHp().words()));
        return table;
    }
}
