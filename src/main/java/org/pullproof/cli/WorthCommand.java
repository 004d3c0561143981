package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.words.DecisionWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells whether the engine is worth more money. */
@Command(
        name = "worth",
        description =
                "Weighs what could be done next: what each option leaves you better off, what would flip the choice, and which"
                        + " test could still change it.",
        footer = {
            "",
            "A spending is WHAT=MONEY. An option is NAME=LOW/LIKELY/HIGH, then its hours and its gain if known:",
            "\"cold-air duct=60USD/85USD/120USD,2h,0/1/2%%\".",
            "",
            "Example: pullproof worth grey-coupe --spend \"jets=18USD\""
        })
final class WorthCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

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

    WorthCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        Figures figures = output.figures(tools);
        WorthFindings findings = tools.appraise().of(edited(), figures).worth();
        Answer answer = findings.weighing().answer();
        Sentence sentence = new DecisionWords(answer).paragraph();
        if (output.json()) {
            output.print(new WorthJson(findings, answer, sentence).json());
        } else {
            new WorthPrinter(output, new AnswerRows(answer, figures), findings).print(sentence);
        }
        return Output.DONE;
    }

    private OpenSession edited() throws Exception {
        List<Spending> paid = spend.stream()
                .map(text -> MoneyArguments.spending(text, LocalDate.now(clock)))
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
}
