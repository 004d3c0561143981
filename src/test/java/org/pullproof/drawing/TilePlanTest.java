package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Layout;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

class TilePlanTest {
    private static final String LONG = "low, air at the exhaust and at the intake";

    @ParameterizedTest
    @CsvSource({"INLINE, 3", "INLINE, 4", "INLINE, 6", "V, 6", "V, 8", "V, 12", "FLAT, 4", "FLAT, 6"})
    void everyEngineFitsTheSheetWithoutOverlap(Layout layout, int cylinders) {
        EngineProfile profile = Engines.of(layout, cylinders);

        Picture plan = plan(profile, State.LOW, "low, air at exhaust");

        plan.hasNothingOutside();
        assertThat(plan.words()).containsAll(numbers(cylinders));
    }

    @Test
    void longWordsTakeMoreLinesAndNoneIsLost() {
        Picture plan = plan(Engines.v8(), State.LOW, LONG);

        assertThat(String.join(" ", plan.words())).contains("low, air").contains("intake");
        plan.hasNothingOutside();
    }

    @Test
    void whatIsNotMeasuredIsADashAndNotZero() {
        assertThat(plan(Engines.v8(), State.NOT_MEASURED, "not measured").words())
                .contains("–")
                .doesNotContain("0 psi");
    }

    @ParameterizedTest
    @EnumSource(State.class)
    void everyStateHasAShapeOfItsOwn(State state) {
        List<Drawing> others = EnumSet.complementOf(EnumSet.of(state)).stream()
                .map(other -> drawing(Engines.v8(), other, "same words"))
                .toList();

        assertThat(others).doesNotContain(drawing(Engines.v8(), state, "same words"));
    }

    private static List<String> numbers(int last) {
        return IntStream.rangeClosed(1, last).mapToObj(String::valueOf).toList();
    }

    private static Picture plan(EngineProfile profile, State state, String words) {
        return new Picture(drawing(profile, state, words));
    }

    private static Drawing drawing(EngineProfile profile, State state, String words) {
        List<CylinderFindings> cylinders = IntStream.rangeClosed(1, profile.cylinders())
                .mapToObj(number -> cylinder(number, state, words))
                .toList();
        return TilePlan.of(profile, cylinders, new Figures(UnitSystem.US), 698);
    }

    private static CylinderFindings cylinder(int number, State state, String words) {
        Optional<Quantity> dry =
                state == State.NOT_MEASURED ? Optional.empty() : Optional.of(Quantity.of("158", Unit.PSI));
        return new CylinderFindings(
                number,
                state,
                words,
                dry,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                dry.map(there -> "14 %"),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Set.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
    }
}
