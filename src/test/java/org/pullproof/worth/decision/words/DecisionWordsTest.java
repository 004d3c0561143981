package org.pullproof.worth.decision.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.pullproof.worth.decision.Decision;
import org.pullproof.worth.decision.ReferenceCase;
import org.pullproof.worth.decision.SmallProblem;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.MoneyTest;
import org.pullproof.worth.decision.problem.PowerNow;
import org.pullproof.worth.decision.problem.Problem;

/** The paragraph says what the method asks of it (worth.md 3) and what the reference cases want said, in meaning. */
class DecisionWordsTest {
    static final List<String> CASES = ReferenceCase.NAMES;

    private static final Map<String, Answer> ANSWERS = new HashMap<>();

    private static DecisionWords of(String name) {
        return new DecisionWords(ANSWERS.computeIfAbsent(
                name, key -> new Decision(11).answer(ReferenceCase.read(key).problem())));
    }

    private static String words(DecisionWords words, Part.Kind kind) {
        return words.parts().stream()
                .filter(part -> part.kind() == kind)
                .map(part -> part.sentence().plain())
                .findFirst()
                .orElse("");
    }

    private static String said(SmallProblem small, Part.Kind kind) {
        return said(small.problem(), kind);
    }

    private static String said(Problem problem, Part.Kind kind) {
        return words(new DecisionWords(new Decision(1).answer(problem)), kind);
    }

    private static List<Part.Kind> kinds(DecisionWords words) {
        return words.parts().stream().map(Part::kind).toList();
    }

    private static Problem askingHealth(Problem problem, String test) {
        return new Problem(
                problem.currency(),
                problem.owner(),
                problem.assumptions(),
                problem.power(),
                problem.faults(),
                problem.states(),
                problem.options(),
                problem.tests(),
                Optional.of(test));
    }

    @ParameterizedTest
    @FieldSource("CASES")
    void everyPartIsOneSentenceAndNothingIsCertain(String name) {
        for (Part part : of(name).parts()) {
            String words = part.sentence().plain();
            assertThat(words).endsWith(".").doesNotContain(". ").doesNotContainIgnoringCase("certain");
            assertThat(Character.isLowerCase(words.charAt(0))).isFalse();
        }
        assertThat(of(name).paragraph().plain()).doesNotContain("chance best").doesNotContain("chance to be best");
    }

    @Test
    void beforePurchaseTheOfferAndItsLimitAreSaid() {
        DecisionWords words = of("1-before-purchase");
        assertThat(words(words, Part.Kind.ACT))
                .startsWith(
                        "Too close to call at $3,000: buy (\"buy, tune, fix step by step\") is about $290 ahead of walk away")
                .contains("noise of about $520", "offer between $2,600 and $3,250, and no more")
                .contains("\"buy, drive as it is\" begins with the same act", "about $100 less");
        assertThat(words(words, Part.Kind.WHY)).contains("if it turns out \"bore scored\", sell as it stands");
        assertThat(words(words, Part.Kind.WHY))
                .containsPattern(
                        "takes \\$31\\d \\(rings\\), \\$31\\d \\(bottom-end\\) and \\$21\\d \\(exhaust-valve\\)");
        assertThat(words(words, Part.Kind.FIND_OUT))
                .startsWith("Before you decide, oil pressure, mechanical (worth about $117, costs $41)")
                .contains("\"low\" means \"walk away\" (highest price about $2,200)", "(highest price about $3,450)")
                .contains("leak-down and listening, one cylinder is worth about $46, not its price of $104");
        assertThat(words(words, Part.Kind.NOT_COUNTED)).startsWith("$60 already spent is not counted");
    }

    /** A test worth doing first comes before what to do; otherwise after. */
    @Test
    void aTestWorthDoingFirstIsSaidFirst() {
        assertThat(kinds(of("1-before-purchase")))
                .containsExactly(
                        Part.Kind.FIND_OUT, Part.Kind.ACT, Part.Kind.WHY, Part.Kind.TURNS_ON, Part.Kind.NOT_COUNTED);
        assertThat(kinds(of("2-healthy-with-budget")))
                .containsExactly(
                        Part.Kind.ACT, Part.Kind.WHY, Part.Kind.TURNS_ON, Part.Kind.FIND_OUT, Part.Kind.NOT_COUNTED);
    }

    @Test
    void withABudgetWhatItShutsOutIsSaid() {
        DecisionWords words = of("2-healthy-with-budget");
        assertThat(words(words, Part.Kind.ACT))
                .startsWith("Too close to call: tune on (\"tune on, cheap list\") is about $60 ahead of stop, drive")
                .contains("noise of about $130", "\"stop, drive\" leaves \"tune on\" possible, so it goes first")
                .contains("\"tune on with a dyno hour\" begins with the same act", "about $60 less");
        assertThat(words(words, Part.Kind.TURNS_ON))
                .startsWith("Stop, drive would be best if one hp were worth below $50 instead of $60")
                .contains("an own hour were worth above $6.");
        assertThat(words(words, Part.Kind.FIND_OUT))
                .startsWith("No test you may do now would change this")
                .contains(
                        "leak-down, all", "oil pressure, mechanical", "worth $0", "every result leads to the same act");
        assertThat(words(words, Part.Kind.NOT_COUNTED))
                .containsPattern("exceed the cap of \\$1,500 in 8[0-3] and 100 of 100 cases");
    }

    @Test
    void aClearAnswerNamesTheSecondAndWhereItTurnsBack() {
        DecisionWords words = of("3-bad-cylinder-altitude");
        assertThat(words(words, Part.Kind.ACT))
                .startsWith("Lash first, then the head: about $1,6")
                .contains("better than \"stop, drive as it is\"", "\"head at once\" is about $16");
        assertThat(words(words, Part.Kind.WHY)).contains("if it turns out \"cracked\", sell as it stands");
        assertThat(words(words, Part.Kind.TURNS_ON))
                .contains("sell as it is would be best if an own hour were worth above $28 instead of $12")
                .contains("rings were above 24\u00a0% likely instead of 7\u00a0%");
        assertThat(words(words, Part.Kind.FIND_OUT))
                .startsWith("Before you decide, borescope (worth about $122, costs $66)")
                .contains("\"burnt edge\" means \"head at once\"", "\"bore scored\" means \"sell as it is\"")
                .contains("oil pressure, mechanical is worth about $7, not its price of $40");
    }

    /** 25 hp at 20 a hp for 300: 200 better than doing nothing, which is the second too and not said twice. */
    @Test
    void whereDoingNothingIsTheSecondItIsSaidOnce() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 300, 25));
        assertThat(said(small, Part.Kind.ACT)).contains("better than").doesNotContain("behind");
    }

    @Test
    void stopSpendingSaysWhatTheDearerOptionsLose() {
        DecisionWords words = of("4-after-ten-changes");
        assertThat(words(words, Part.Kind.ACT))
                .startsWith(
                        "Stop spending: nothing on the list that costs more pays; go to setup 7 and stop takes about $10")
                .endsWith("is worth about $38.");
        assertThat(words(words, Part.Kind.WHY))
                .contains("\"setup 7 and another dyno day\" loses about $780", "\"both heads\" loses about $1,900")
                .contains("\"full rebuild by shop\" loses about $5,500 and is over the budget")
                .contains("the measured +1.31\u00a0% of setup 7 is counted as +1.20\u00a0%");
        assertThat(words(words, Part.Kind.TURNS_ON)).contains("below $16 instead of $30", "above $42 instead of $20");
        assertThat(words(words, Part.Kind.NOT_COUNTED)).startsWith("$1,400 already spent is not counted");
    }

    /** X* is 4,500 (by hand in DecisionTest) with a noise of 511.9. */
    @Test
    void walkingAwayNamesTheOfferThatWouldChangeIt() {
        SmallProblem small = SmallProblem.of(SmallProblem.walk(), SmallProblem.buy());
        assertThat(said(small.forSale(Optional.of(5500.0), Optional.empty()), Part.Kind.ACT))
                .isEqualTo(
                        "Walk away: the car is worth at most about $4,500 (±\u00a0$510) to you, against $5,500 asked; offer at"
                                + " most $4,500.");
        assertThat(said(small.forSale(Optional.of(5500.0), Optional.of(5200.0)), Part.Kind.ACT))
                .endsWith("against $5,500 asked; the seller takes no less than $5,200.");
    }

    @Test
    void withoutAPriceTheHighestIsTheAnswer() {
        SmallProblem small = SmallProblem.of(SmallProblem.walk(), SmallProblem.buy());
        assertThat(said(small.forSale(Optional.empty(), Optional.empty()), Part.Kind.ACT))
                .isEqualTo("Pay at most about $4,500 (±\u00a0$510).");
    }

    @Test
    void nothingOnTheListPaysIsSaidPlainly() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 300, 5));
        assertThat(said(small, Part.Kind.ACT)).isEqualTo("Stop spending: nothing on the list pays.");
        assertThat(said(small, Part.Kind.WHY)).isEqualTo("\"jets\" loses about $200.");
    }

    /** 5 hp for 80 pay from 16 a hp: at 500 the answer hangs on that, and it is said before all else. */
    @Test
    void aHighWorthOfAHpIsSaidFirst() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 80, 5))
                .valuing(500, 10);
        DecisionWords words = new DecisionWords(new Decision(1).answer(small.problem()));
        assertThat(kinds(words)).startsWith(Part.Kind.TURNS_ON, Part.Kind.ACT);
        assertThat(words(words, Part.Kind.TURNS_ON))
                .isEqualTo("Only because one hp is worth $500 to you: below $16 drive as it is would be best.");
    }

    /** 1 hp for 80 would pay from 80 a hp only. */
    @Test
    void aFlipOutsideASensibleBandIsSaidAsOnlyIf() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 80, 1));
        assertThat(said(small, Part.Kind.TURNS_ON))
                .isEqualTo("Jets would be best only if one hp were worth above $80 instead of $20.");
    }

    @Test
    void aGateTestComesFirstWhateverItIsWorth() {
        MoneyTest look = SmallProblem.test("oil pressure", 0, .5, .5);
        MoneyTest gate = new MoneyTest(
                look.name(), look.minutes(), look.money(), look.damage(), look.results(), true, look.firstStepOf());
        Problem problem = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400))
                .with(gate)
                .problem();
        DecisionWords words = new DecisionWords(new Decision(1).answer(problem));
        assertThat(kinds(words)).startsWith(Part.Kind.GATE).doesNotContain(Part.Kind.FIND_OUT);
        assertThat(words(words, Part.Kind.GATE))
                .isEqualTo("First oil pressure, whatever it is worth in money: it says whether the engine may be run.");
    }

    /** The look is worth 130 (by hand in DecisionTest): at 120 that hardly matters, at 140 it is not its price. */
    @ParameterizedTest
    @CsvSource({
        "30, 'Before you decide, look (worth about $130, costs $30): \"found\" means \"rings\", \"not found\" means \"drive as it is\".'",
        "120, 'Look hardly matters: worth about $130, costs $120.'",
        "140, 'No test you may do now is worth its price: look is worth about $130, not its price of $140.'"
    })
    void aTestIsJudgedByItsNet(double money, String words) {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400));
        assertThat(said(small.with(SmallProblem.test("look", money, 1, 0)), Part.Kind.FIND_OUT))
                .isEqualTo(words);
    }

    /** Found with 0.75 or 0.25: one miss leaves 0.125·800 − 0.375·260 above 0, two leave 25 − 73.125 = −48.1. */
    @Test
    void twoTestsThatPayOnlyTogetherAreNamedTogether() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400))
                .with(SmallProblem.test("look", 0, .75, .25), SmallProblem.test("listen", 0, .75, .25));
        assertThat(said(small, Part.Kind.FIND_OUT))
                .isEqualTo(
                        "Before you decide, look and listen together (worth about $48, cost $0): alone each says too little.");
    }

    @Test
    void aTestThatHealthWouldDoIsGivenWithBothReasons() {
        Problem problem = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400))
                .with(SmallProblem.test("look", 30, 1, 0), SmallProblem.test("balance", 0, .6, .4))
                .problem();
        assertThat(said(askingHealth(problem, "balance"), Part.Kind.FIND_OUT))
                .startsWith("Before you decide, look")
                .endsWith("; balance says most about the fault, but either answer leaves you at \"rings\".");
    }

    @Test
    void theCapNamesWhatItCosts() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400))
                .capped(350);
        assertThat(said(small, Part.Kind.NOT_COUNTED))
                .isEqualTo(
                        "\"rings\" exceeds the cap of $350 in 100 of 100 cases, which costs about $270 against \"rings\".");
    }

    @Test
    void powerThatIsNotFeltOrNotMeasuredIsSaid() {
        Problem problem = SmallProblem.of(SmallProblem.keep(), SmallProblem.tune("jets", 80, 5))
                .problem();
        PowerNow high = new PowerNow(100, false, Optional.of(1600.0));
        assertThat(said(SmallProblem.changed(problem, problem.owner(), high), Part.Kind.NOT_COUNTED))
                .isEqualTo("Gains are in corrected hp, and fewer are felt at 1,600\u00a0m.");
        PowerNow guessed = new PowerNow(100, true, Optional.empty());
        assertThat(said(SmallProblem.changed(problem, problem.owner(), guessed), Part.Kind.NOT_COUNTED))
                .isEqualTo("The power now is estimated from the displacement.");
    }

    @Test
    void withNothingToAddAPartIsLeftOut() {
        SmallProblem small = SmallProblem.of(SmallProblem.keep(), SmallProblem.cure("rings", 400));
        assertThat(said(small, Part.Kind.NOT_COUNTED)).isEmpty();
        assertThat(said(small, Part.Kind.FIND_OUT)).isEmpty();
        assertThat(said(small.spending(250), Part.Kind.NOT_COUNTED)).isEqualTo("$250 already spent is not counted.");
    }
}
