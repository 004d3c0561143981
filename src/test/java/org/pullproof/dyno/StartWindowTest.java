package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pullproof.dyno.StartWindow.Lies;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** Windows: coolant ± 3 °C, oil ± 5, intake ± 3, volts ± 0.3, 90 s or with charging 150 s apart: common practice, no source. */
class StartWindowTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);
    private static final PullLimits LIMITS = new TradeConstants().pulls(Judgement.own());

    @Test
    void beforeTheFirstPullTheWarmUpIsTheMeasure() {
        StartWindow window = StartWindow.of(List.of(), LIMITS, false);
        assertThat(window.limits()).extracting(StartWindow.Limit::role).containsExactly(Role.COOLANT, Role.OIL);
        assertThat(window.limits()).noneMatch(StartWindow.Limit::usual);
        assertThat(window.due(new Figures(UnitSystem.METRIC)))
                .anySatisfy(due -> assertThat(plain(due)).startsWith("Coolant temperature 80 °C to 95 °C"));
    }

    @Test
    void afterThreePullsTheirMedianIs() {
        StartWindow window = StartWindow.of(pulls(86, 92, 87), LIMITS, false);
        StartWindow.Limit coolant = window.limits().get(0);
        assertThat(coolant.from()).isEqualTo(273.15 + 87 - 3, within(1e-9));
        assertThat(coolant.to()).isEqualTo(273.15 + 87 + 3, within(1e-9));
    }

    @Test
    void ofTwoPullsTheFirstIs() {
        assertThat(StartWindow.of(pulls(86, 92), LIMITS, false).limits().get(0).to())
                .isEqualTo(273.15 + 89, within(1e-9));
    }

    @Test
    void aPullThatEndedTooWarmHasToWait() {
        StartWindow window = StartWindow.of(pulls(86, 86, 86), LIMITS, false);
        assertThat(window.limits().get(0).lies()).isEqualTo(Lies.ABOVE);
        assertThat(plain(window.due(new Figures(UnitSystem.METRIC)).get(0))).contains("ended at 94 °C: wait");
    }

    @Test
    void theWaitRunsDown() {
        StartWindow window = StartWindow.of(pulls(86), LIMITS, false);
        assertThat(window.wait(NOON.plusSeconds(52))).isEqualTo(Duration.ofSeconds(38));
        assertThat(window.wait(NOON.plusSeconds(90))).isEqualTo(Duration.ZERO);
        assertThat(window.wait(NOON.minusDays(1))).isEqualTo(Duration.ZERO);
    }

    @Test
    void aChargedEngineWaitsLonger() {
        assertThat(StartWindow.of(pulls(86), LIMITS, true).pause()).isEqualTo(Duration.ofSeconds(150));
    }

    private static String plain(String words) {
        return words.replace('\u00a0', ' ');
    }

    /** Pulls whose coolant begins at these temperatures, °C, and rises by 8 in the pull. */
    private static List<PullFindings> pulls(double... coolant) {
        List<PullFindings> pulls = new ArrayList<>();
        for (int i = 0; i < coolant.length; i++) {
            Pull pull = new Pull(
                    "base",
                    i + 1,
                    new PullFile("p", "p", "0".repeat(64)),
                    NOON,
                    List.of(),
                    Optional.empty(),
                    Optional.empty());
            pulls.add(new PullFindings(
                    pull,
                    pull.id(),
                    warming(coolant[i] + 273.15),
                    PowerCurve.from(warming(coolant[i] + 273.15)),
                    Optional.empty(),
                    Optional.empty(),
                    100,
                    3000,
                    OptionalDouble.empty(),
                    List.of()));
        }
        return pulls;
    }

    private static Trace warming(double kelvin) {
        double[] rpm = {2000, 3000, 4000};
        Recording recording = Recording.of(Map.of(
                Role.RPM, rpm,
                Role.POWER, new double[] {80e3, 100e3, 120e3},
                Role.COOLANT, new double[] {kelvin, kelvin + 4, kelvin + 8}));
        return Trace.of(recording, new int[] {0, 1, 2}, false);
    }

    @Test
    void onlyThePullsOfTheLastDayTell() {
        List<DynoDay> days = List.of(
                new DynoDay(NOON.toLocalDate(), List.of(), List.of()),
                new DynoDay(LocalDate.of(2026, 6, 20), List.of(), List.of()));
        assertThat(new DayStarts(LIMITS).window(days, pulls(86), false).last()).isEmpty();
    }
}
