package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.drawing.EnginePlan.Pair;
import org.pullproof.drawing.Shape.Circle;
import org.pullproof.drawing.Shape.Line;
import org.pullproof.drawing.Shape.Path;
import org.pullproof.drawing.Shape.Text;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Layout;
import org.pullproof.testing.Tools;

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

    @ParameterizedTest
    @CsvSource({"372, 236", "428, 236", "828, 300"})
    void aWireRunsFromThePostToEachPlugRedWhereItMustRunApartBrokenWhereItIsOff(double width, double height) {
        Picture plan = new Picture(EnginePlan.wired(
                Tools.profile("v8-distributor-order-a"), List.of(new Pair(5, 7)), Set.of(7, 8), width, height));

        plan.hasNothingOutside();
        List<Line> wires = plan.all(Line.class).stream()
                .filter(line -> line.stroke().width() == 1.4)
                .toList();
        assertThat(wires).hasSize(8);
        assertThat(wires).filteredOn(wire -> wire.stroke().ink() == Ink.RED).hasSize(2);
        assertThat(wires).filteredOn(wire -> !wire.stroke().dash().isEmpty()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"i4-distributor", "i6-distributor", "flat4-distributor", "v6-odd-fire-90"})
    void otherEnginesWithADistributorFitWithTheirWires(String profile) {
        new Picture(EnginePlan.wired(Tools.profile(profile), List.of(), Set.of(), 400, 236)).hasNothingOutside();
    }

    private static List<Path> redBrackets(Picture plan) {
        return plan.all(Path.class).stream()
                .filter(path ->
                        path.stroke().filter(stroke -> stroke.ink() == Ink.RED).isPresent())
                .toList();
    }
}
