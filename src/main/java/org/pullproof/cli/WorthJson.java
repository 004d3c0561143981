package org.pullproof.cli;

import java.util.List;
import java.util.Map;
import org.pullproof.units.Power;
import org.pullproof.units.Sentence;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PolicyStep;
import org.pullproof.worth.decision.answer.PurchaseAnswer;
import org.pullproof.worth.decision.answer.TestAnswer;

/** The answer whether more money is worth it, as JSON; money is in the currency named. */
record WorthJson(WorthFindings findings, Answer answer, Sentence sentence) {
    Json json() {
        Json json = new Json()
                .put("currency", findings.currency())
                .put("call", answer.call().key())
                .put("firstAct", answer.best().option().firstAct())
                .put("sentence", sentence.plain())
                .put("options", answer.options().stream().map(WorthJson::option).toList());
        answer.lead()
                .ifPresent(lead -> json.put(
                        "lead", new Json().put("value", lead.by().value()).put("noise", lead.noise())));
        answer.purchase().ifPresent(purchase -> purchase(json, purchase));
        return json.put("flips", answer.flips().stream().map(WorthJson::flip).toList())
                .put("perfect", perfect())
                .put("nextTests", answer.tests().stream().map(WorthJson::test).toList())
                .put("notCounted", findings.spent().value());
    }

    private static Json option(OptionAnswer row) {
        return new Json()
                .put("name", row.name())
                .put("firstAct", row.option().firstAct())
                .put("expectedNet", row.expected().value())
                .put("netP10", row.net().p10())
                .put("netP50", row.net().p50())
                .put("netP90", row.net().p90())
                .put("costP10", row.cost().p10())
                .put("costP50", row.cost().p50())
                .put("costP90", row.cost().p90())
                .put("hours", row.hours())
                .put("chanceOverBudget", row.overBudget())
                .put("chanceBest", row.chanceBest())
                .put("regret", row.regret())
                .put("powerAfterKw", Power.ofHorsepower(row.powerAfterHp()).kilowatt())
                .put("allowed", row.allowed())
                .put("dominated", !row.dominatedBy().isEmpty())
                .put("policy", row.policy().stream().map(WorthJson::step).toList());
    }

    private static Json step(PolicyStep step) {
        return new Json().put("path", step.path()).put("choice", step.choice());
    }

    private static void purchase(Json json, PurchaseAnswer purchase) {
        json.put("highestPrice", purchase.highest().value())
                .put("highestPriceNoise", purchase.noise())
                .put(
                        "findings",
                        purchase.findings().stream()
                                .map(finding ->
                                        new Json().put("fault", finding.fault()).put("takesOff", finding.takesOff()))
                                .toList());
    }

    private static Json flip(Flip flip) {
        return new Json()
                .put("input", flip.input().key())
                .put("now", flip.now())
                .put("at", flip.at())
                .put("becomes", flip.becomes());
    }

    private List<Json> perfect() {
        return answer.knowing().faults().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(known -> new Json()
                        .put("fault", known.getKey())
                        .put("value", known.getValue().value()))
                .toList();
    }

    private static Json test(TestAnswer test) {
        return new Json()
                .put("name", test.test().name())
                .put("value", test.value().value())
                .put("cost", test.cost())
                .put("net", test.net());
    }
}
