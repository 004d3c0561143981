package org.pullproof.worth.decision.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Textbook exercises of decision analysis, their printed answers in {@code 13_decision_checks.csv} (sources in the file). */
class WeighingTest {
    private static final String CHECKS = "/org/pullproof/worth/reference/13_decision_checks.csv";

    /** Six decimals are printed. */
    private static final double PRINTED = 5e-7;

    private final Map<String, Double> answers = new HashMap<>();

    private static double[] row(double... values) {
        return values;
    }

    /** Options that are single ends with these sums by state. */
    private static Weighing options(double[]... sums) {
        List<Plan> plans = new ArrayList<>();
        for (int a = 0; a < sums.length; a++) {
            plans.add(new Plan(new Leaf(a), 0));
        }
        return new Weighing(plans, Table.of(sums), 1);
    }

    private static double best(double[] chance, double[]... sums) {
        return options(sums).best(chance).value();
    }

    /** A finding that tells the states of each group from all others. */
    private static List<double[]> groups(int states, int[]... groups) {
        return Arrays.stream(groups)
                .map(group -> {
                    double[] shown = new double[states];
                    Arrays.stream(group).forEach(s -> shown[s] = 1);
                    return shown;
                })
                .toList();
    }

    private static List<double[]> each(int states) {
        int[][] single = new int[states][];
        for (int s = 0; s < states; s++) {
            single[s] = row(s);
        }
        return groups(states, single);
    }

    private static int[] row(int state) {
        return new int[] {state};
    }

    private void put(String example, String quantity, double value) {
        answers.put(example + "|" + quantity, value);
    }

    private void firstOfClemen() {
        double[] chance = row(.1, .2, .6, .1);
        double[] a = row(20, 10, 5, 0);
        double[] b = row(6, 6, 6, 6);
        double value = options(a, b).valueOf(chance, each(4));
        put("Clemen 12.2", "EMV(A)", best(chance, a));
        put("Clemen 12.2", "EMV(perfect info)", best(chance, a, b) + value);
        put("Clemen 12.2", "EVPI", value);
    }

    /** Eight states: the four of E, each with the two of F. */
    private void secondOfClemen() {
        double[] chance = row(.07, .03, .14, .06, .42, .18, .07, .03);
        double[] a = row(20, 20, 10, 10, 0, 0, -10, -10);
        double[] b = row(5, -1, 5, -1, 5, -1, 5, -1);
        List<double[]> e = groups(8, new int[] {0, 1}, new int[] {2, 3}, new int[] {4, 5}, new int[] {6, 7});
        List<double[]> f = groups(8, new int[] {0, 2, 4, 6}, new int[] {1, 3, 5, 7});
        Weighing both = options(a, b);
        double now = both.best(chance).value();
        put("Clemen 12.4", "EMV(A)", best(chance, a));
        put("Clemen 12.4", "EMV(B)", best(chance, b));
        put("Clemen 12.4", "EMV(info E)", now + both.valueOf(chance, e));
        put("Clemen 12.4", "EVPI(E)", both.valueOf(chance, e));
        put("Clemen 12.4", "EMV(info F)", now + both.valueOf(chance, f));
        put("Clemen 12.4", "EVPI(F)", both.valueOf(chance, f));
        put("Clemen 12.4", "EMV(info E,F)", now + both.valueOf(chance, each(8)));
        put("Clemen 12.4", "EVPI(E,F)", both.valueOf(chance, each(8)));
    }

    /** Nine states: dry, wet and soaking, each at three costs of drilling. */
    private void oilWildcatter() {
        String example = "SAS/OR DTREE oil wildcatter";
        double[] chance = row(.1, .3, .1, .06, .18, .06, .04, .12, .04);
        double[] drill = row(-150e3, -300e3, -500e3, 550e3, 400e3, 200e3, 1050e3, 900e3, 700e3);
        Weighing both = options(drill, new double[9]);
        List<double[]> oil = groups(9, new int[] {0, 1, 2}, new int[] {3, 4, 5}, new int[] {6, 7, 8});
        List<double[]> cost = groups(9, new int[] {0, 3, 6}, new int[] {1, 4, 7}, new int[] {2, 5, 8});
        double now = both.best(chance).value();
        put(example, "EMV(best)", now);
        put(example, "EMV(perfect info oil)", now + both.valueOf(chance, oil));
        put(example, "EVPI(oil)", both.valueOf(chance, oil));
        put(example, "EMV(perfect info cost)", now + both.valueOf(chance, cost));
        put(example, "EVPI(cost)", both.valueOf(chance, cost));
    }

    /** With an end that pays 1 in some states the best value under p·P(e|·) is their joint chance with e. */
    private static double joint(double[] chance, double[] likelihood, double... pays) {
        return best(Weights.times(chance, likelihood), pays);
    }

    private void exercisesOfBayes() {
        String siue = "SIUE decision-tree exercise III";
        double[] oil = row(.3, .7);
        double positive = joint(oil, row(.9, .3), 1, 1);
        put(siue, "P(+)", positive);
        put(siue, "P(oil|+)", joint(oil, row(.9, .3), 1, 0) / positive);
        put(siue, "P(no oil|-)", joint(oil, row(.1, .7), 0, 1) / joint(oil, row(.1, .7), 1, 1));
        String field = "oil-field appraisal exercise";
        double[] large = row(.6, .4);
        double favourable = joint(large, row(.9, .2), 1, 1);
        put(field, "P(F)", favourable);
        put(field, "P(L|F)", joint(large, row(.9, .2), 1, 0) / favourable);
        put(field, "P(L|U)", joint(large, row(.1, .8), 1, 0) / joint(large, row(.1, .8), 1, 1));
        put(field, "joint L&F", joint(large, row(.9, .2), 1, 0));
        put(field, "joint S&F", joint(large, row(.9, .2), 0, 1));
        put(field, "joint S&U", joint(large, row(.1, .8), 0, 1));
        double[] ill = row(.01, .99);
        put(
                "mammography (Eddy/Yudkowsky form)",
                "P(D|+)",
                joint(ill, row(.8, .096), 1, 0) / joint(ill, row(.8, .096), 1, 1));
    }

    private void newDesign() {
        String example = "engineering economy, new design";
        double[] chance = row(.30, .55, .15);
        Weighing both = options(row(79063, 11042, -63781), row(0, 0, 0));
        double now = both.best(chance).value();
        put(example, "EV", now);
        put(example, "EV with perfect info", now + both.valueOf(chance, each(3)));
        put(example, "EVPI", both.valueOf(chance, each(3)));
    }

    private void condominium() {
        String example = "condominium EVSI";
        double[] chance = row(.8, .2);
        double[] favourable = row(.9, .25);
        double[] unfavourable = row(.1, .75);
        Weighing sizes = options(row(8, 7), row(14, 5), row(20, -9));
        double now = sizes.best(chance).value();
        double study = sizes.valueOf(chance, List.of(favourable, unfavourable));
        double perfect = sizes.valueOf(chance, each(2));
        put(example, "EV", now);
        put(example, "EVPI", perfect);
        put(example, "P(F)", joint(chance, favourable, 1, 1));
        put(example, "P(s1|F)", joint(chance, favourable, 1, 0) / joint(chance, favourable, 1, 1));
        put(example, "P(s1|U)", joint(chance, unfavourable, 1, 0) / joint(chance, unfavourable, 1, 1));
        put(example, "EV with SI", now + study);
        put(example, "EVSI", study);
        put(example, "efficiency %", 100 * study / perfect);
    }

    @Test
    void allPrintedAnswersComeOutOfBestAndValueOf() throws IOException {
        firstOfClemen();
        secondOfClemen();
        oilWildcatter();
        exercisesOfBayes();
        newDesign();
        condominium();
        Map<String, Double> printed = printed();
        assertThat(answers).hasSize(37).containsOnlyKeys(printed.keySet());
        printed.forEach((key, value) -> assertThat(answers.get(key)).as(key).isCloseTo(value, within(PRINTED)));
    }

    private static Map<String, Double> printed() throws IOException {
        Map<String, Double> printed = new HashMap<>();
        try (InputStream in = Objects.requireNonNull(WeighingTest.class.getResourceAsStream(CHECKS))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("example,"))
                    .map(WeighingTest::fields)
                    .forEach(fields -> printed.put(fields.get(0) + "|" + fields.get(2), Double.valueOf(fields.get(3))));
        }
        return printed;
    }

    /** A comma separates unless it stands between quotes. */
    private static List<String> fields(String line) {
        return Arrays.stream(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .map(field -> field.replace("\"", ""))
                .toList();
    }

    @Test
    void aChoiceWithOneChildEqualsTheChild() {
        Table table = Table.of(new double[][] {row(3, 5)});
        Weighing plain = new Weighing(List.of(new Plan(new Leaf(0), 0)), table, 1);
        Weighing chosen = new Weighing(List.of(new Plan(new Pick(0, List.of(new Leaf(0))), 1)), table, 1);
        assertThat(chosen.best(row(.5, .5)).value())
                .isEqualTo(plain.best(row(.5, .5)).value());
    }

    @Test
    void aResultThatEveryStateMakesAlikeIsWorthNothing() {
        Weighing sizes = options(row(8, 7), row(14, 5), row(20, -9));
        assertThat(sizes.valueOf(row(.8, .2), List.of(row(.3, .3), row(.7, .7))))
                .isZero();
    }

    /** By hand: over the cap in state 2 only, so the dear child goes when that state has more than a tenth. */
    @Test
    void aChoiceTurnsBackBeforeTheCap() {
        Table table = new Table(new double[][] {row(10, 10), row(1, 1)}, new double[][] {row(0, 1), row(0, 0)});
        Plan plan = new Plan(new Pick(0, List.of(new Leaf(0), new Leaf(1))), 1);
        Weighing weighing = new Weighing(List.of(plan), table, .1);
        assertThat(weighing.best(row(.9, .1)).value()).isEqualTo(10, within(1e-12));
        assertThat(weighing.best(row(.8, .2)).value()).isEqualTo(1, within(1e-12));
        assertThat(weighing.uncapped().best(row(.8, .2)).value()).isEqualTo(10, within(1e-12));
    }

    /** By hand: when every child is over the cap, all are open again. */
    @Test
    void aChoiceWithNothingAllowedPicksFromAll() {
        Table table = new Table(new double[][] {row(1.0), row(2.0)}, new double[][] {row(1.0), row(1.0)});
        Plan plan = new Plan(new Pick(0, List.of(new Leaf(0), new Leaf(1))), 1);
        assertThat(new Weighing(List.of(plan), table, .1).best(row(1.0)).value())
                .isEqualTo(2);
    }

    @Test
    void tiesGoToTheFirst() {
        assertThat(options(row(4, 4), row(4, 4)).best(row(.5, .5)).option()).isZero();
    }

    /** By hand: seen at 0.3 the first outcome, with 0.6, comes; at 0.7 the second. */
    @Test
    void aLookTakesTheOutcomeOfItsOwnDraw() {
        Look look = new Look(List.of(row(.6, .6), row(.4, .4)), List.of(new Leaf(0), new Leaf(1)), row(.3, .7));
        assertThat(look.leaf(new int[0], 0, 0)).isZero();
        assertThat(look.leaf(new int[0], 0, 1)).isEqualTo(1);
    }
}
