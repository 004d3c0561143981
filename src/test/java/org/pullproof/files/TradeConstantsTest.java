package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.faults.Fault;
import org.pullproof.session.Judgement;
import org.pullproof.session.TradeConstant;

class TradeConstantsTest {
    private final TradeConstants constants = new TradeConstants();

    private static Judgement judgement(Map<String, Double> values) {
        return new Judgement(new TreeMap<>(values));
    }

    @Test
    void everyNumberHasANameOfItsOwnAndEveryConstantWords() {
        assertThat(constants.all().stream().flatMap(constant -> constant.numbers().stream()))
                .extracting(TradeConstant.Figure::name)
                .doesNotHaveDuplicates()
                .contains("faults.priors.faultyCylinders", "health.suspectLeak", "pulls.sparseRpm");
        assertThat(constants.all()).extracting(TradeConstant::words).allMatch(words -> words.endsWith("."));
    }

    @Test
    void anEditedNumberOfMoneyStandsInThePlaceOfTheProgramsOwn() {
        Judgement edited = judgement(Map.of("money.work.lash.p50", 30.0, "money.car.resale-share", 0.2));

        assertThat(constants.problems(edited)).isEmpty();
        assertThat(constants.money(edited).number("work.lash.p50")).isEqualTo(30);
        assertThat(constants.money(edited).numbers().number("car.resale-share").own())
                .isTrue();
        assertThat(constants.problems(judgement(Map.of("money.work.lash.p50", 70.0))))
                .singleElement()
                .asString()
                .contains("lash set: costs go from low to high");
    }

    @Test
    void anEditedValueStandsInThePlaceOfTheProgramsOwn() {
        Judgement edited = judgement(
                Map.of("faults.priors.faultyCylinders", 0.3, "health.weakDrop", 12.0, "pulls.sparseRpm", 40.0));

        assertThat(constants.problems(edited)).isEmpty();
        assertThat(constants.faults(edited).priors().faultyCylinders()).isEqualTo(0.3);
        assertThat(constants.health(edited).weakDrop()).isEqualTo(12);
        assertThat(constants.pulls(edited).sparseRpm()).isEqualTo(40);
    }

    @Test
    void sharesThatAddUpAreEditedTogether() {
        Judgement alone = judgement(Map.of("faults.priors.shares.rings", 20.0));
        Judgement together =
                judgement(Map.of("faults.priors.shares.rings", 20.0, "faults.priors.shares.ignition", 22.0));

        assertThat(constants.problems(alone))
                .singleElement()
                .satisfies(problem -> assertThat(problem.toString())
                        .contains("faults.priors.shares")
                        .contains("add up to 107.0, not to 100.0"));
        assertThat(constants.problems(together)).isEmpty();
        assertThat(constants.faults(together).priors().shares().get(Fault.RINGS))
                .isEqualTo(20, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "faults.priors.faultyCylinders, 9, too far from the program's own",
        "faults.priors.faultyCylinders, -1, too far from the program's own",
        "faults.verdicts.sound, 1.2, it goes from 0.09 to 1.0",
        "health.suspectLeak, 30, is not judgement (published)",
        "faults.level.step, 0.01, is not judgement (computation)",
        "faults.weakDrop, 12, did you mean health.weakDrop?",
        "faults.cranking.strokes, 5.5, don't go together"
    })
    void aValueThatCannotBeIsRefusedWithWhatWouldBeRight(String name, double value, String words) {
        assertThat(constants.problems(judgement(Map.of(name, value))))
                .singleElement()
                .satisfies(problem -> assertThat(problem.toString()).contains(words));
    }
}
