package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pullproof.dyno.RunList.Run;
import org.pullproof.engine.Setup;

class RunListTest {
    private static final DayPlan PLAN = new DayPlan(List.of("base", "timing 32°", "base"), 2);

    @Test
    void thePlanSaysWhichPullComesNext() {
        RunList runs = runs(Dyno.day().pull("base", "12:00", 150).pull("base", "12:05", 150));
        assertThat(runs.next().map(Run::name)).contains("timing 32°-1");
        assertThat(runs.runs())
                .extracting(Run::name)
                .containsExactly("base-1", "base-2", "timing 32°-1", "timing 32°-2", "base-3", "base-4");
    }

    @Test
    void anExcludedPullKeepsItsNumberAndIsDrivenAgain() {
        RunList runs = runs(Dyno.day().pull("base", "12:00", 150).excluded("base", "12:05", 150, "wheels slipped"));
        assertThat(runs.runs().get(1).excluded()).contains("wheels slipped");
        assertThat(runs.next().map(Run::name)).contains("base-3");
    }

    @Test
    void aPlanDoneLeavesNothingToCome() {
        DynoDay day = Dyno.day()
                .pull("base", "12:00", 150)
                .days()
                .get(0)
                .withPlan(Optional.of(new DayPlan(List.of("base"), 1)));
        assertThat(RunList.of(day, List.of(day), id -> id).next()).isEmpty();
    }

    @Test
    void aPlanHasSetupsAndPulls() {
        assertThatThrownBy(() -> new DayPlan(List.of(), 3)).hasMessageContaining("names the setups");
        assertThatThrownBy(() -> new DayPlan(List.of("base"), 0)).hasMessageContaining("1 to 12");
    }

    private static RunList runs(Dyno driven) {
        DynoDay day = driven.days().get(0).withPlan(Optional.of(PLAN));
        return RunList.of(day, List.of(day), RunListTest::name);
    }

    private static String name(String id) {
        return Dyno.SETUPS.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }
}
