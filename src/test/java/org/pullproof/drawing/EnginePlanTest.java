package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.drawing.EnginePlan.Pair;
import org.pullproof.drawing.Shape.Circle;
import org.pullproof.drawing.Shape.Path;
import org.pullproof.drawing.Shape.Text;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Layout;

class EnginePlanTest {

    @ParameterizedTest
    @CsvSource({
        "INLINE, 3",
        "INLINE, 4",
        "INLINE, 5",
        "INLINE, 6",
        "V, 6",
        "V, 8",
        "V, 10",
        "V, 12",
        "FLAT, 4",
        "FLAT, 6",
        "INLINE, 12"
    })
    void everyEngineFitsAndShowsEachNumberOnce(Layout layout, int cylinders) {
        EngineProfile profile = Engines.of(layout, cylinders);

        Picture plan = new Picture(EnginePlan.of(profile, List.of(new Pair(1, 2)), 430, 232));

        plan.hasNothingOutside();
        plan.hasNoWordsOnWords();
        for (int cylinder : profile.firing().cylinders()) {
            assertThat(plan.words()).containsOnlyOnce(String.valueOf(cylinder));
        }
    }

    @ParameterizedTest
    @CsvSource({"300, 120", "372, 214", "828, 300"})
    void theV8FitsPicturesOfEverySize(double width, double height) {
        new Picture(EnginePlan.of(Engines.v8(), List.of(new Pair(5, 7)), width, height)).hasNothingOutside();
    }

    @Test
    void theFirstCylinderOfABankStandsAtTheFrontWhichIsLeft() {
        Picture plan = new Picture(EnginePlan.of(Engines.v8(), List.of(), 430, 232));

        assertThat(plan.text("1").x()).isLessThan(plan.text("3").x());
        assertThat(plan.text("3").x()).isLessThan(plan.text("5").x());
    }

    @Test
    void theLeadingBankStandsAThirdOfAPitchFurtherForward() {
        Picture plan = new Picture(EnginePlan.of(Engines.v8(), List.of(), 430, 232));

        double pitch = plan.text("3").x() - plan.text("1").x();
        assertThat(plan.text("2").x() - plan.text("1").x())
                .isCloseTo(pitch / 3, org.assertj.core.data.Offset.offset(0.01));
    }

    @Test
    void theBanksOfAVStandOnBothSidesOfTheCrank() {
        Picture plan = new Picture(EnginePlan.of(Engines.v8(), List.of(), 430, 232));

        assertThat(plan.text("1").y()).isLessThan(116);
        assertThat(plan.text("2").y()).isGreaterThan(116);
    }

    @Test
    void aFlatEngineIsDrawnWithBarrels() {
        Picture plan = new Picture(EnginePlan.of(Engines.of(Layout.FLAT, 4), List.of(), 430, 232));

        assertThat(plan.all(Circle.class)).isEmpty();
    }

    @Test
    void aPairToKeepApartIsBracketedAndNamed() {
        Picture plan = new Picture(EnginePlan.of(Engines.v8(), List.of(new Pair(5, 7)), 430, 232));

        Text words = plan.text("5 and 7: keep these wires apart");
        assertThat(words.ink()).isEqualTo(Ink.RED);
        assertThat(redBrackets(plan)).singleElement().satisfies(bracket -> {
            assertThat(bracket.points().get(0).x()).isEqualTo(plan.text("5").x());
            assertThat(bracket.points().get(3).x()).isEqualTo(plan.text("7").x());
        });
    }

    @Test
    void aPairThatDoesNotStandSideBySideGetsNoBracket() {
        Picture plan = new Picture(EnginePlan.of(Engines.v8(), List.of(new Pair(4, 8)), 430, 232));

        assertThat(redBrackets(plan)).isEmpty();
    }

    private static List<Path> redBrackets(Picture plan) {
        return plan.all(Path.class).stream()
                .filter(path ->
                        path.stroke().filter(stroke -> stroke.ink() == Ink.RED).isPresent())
                .toList();
    }
}
