package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.units.Unit;

/** Signs of the whole engine that come before any single cylinder: they drive the money and may end the running. */
final class AlarmRules {
    /** Hot-idle oil pressure below which the bottom end is in doubt, psi (trade of the job; common practice, no source). */
    private static final double LOW_OIL_PSI = 8;

    private final Proposals proposals;

    AlarmRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::secondGauge, this::cutFilter, this::knock);
    }

    private Optional<NextStep> secondGauge(Situation now) {
        boolean once = now.session().readings().stream()
                        .filter(reading -> reading.test() == TestKind.OIL_PRESSURE)
                        .count()
                == 1;
        return lowOil(now) && once
                ? Optional.of(
                        proposals.test(
                                now,
                                TestKind.OIL_PRESSURE,
                                "Oil pressure with a second gauge",
                                "The first gauge reads low, and one gauge is no proof.",
                                "Below 8 psi (55 kPa) at hot idle, bearings come before any power; above 20 psi it was the gauge."))
                : Optional.empty();
    }

    private Optional<NextStep> cutFilter(Situation now) {
        return (lowOil(now) || knocks(now)) && !now.engineRead(TestKind.FILTER_CUT)
                ? Optional.of(proposals.test(
                        now,
                        TestKind.FILTER_CUT,
                        "Cut the oil filter open",
                        "Oil pressure or knock speaks against the bottom end; the filter has kept what came off it.",
                        "Bright flakes mean bearings; a clean filter speaks for another cause."))
                : Optional.empty();
    }

    private Optional<NextStep> knock(Situation now) {
        return knocks(now) && !now.engineRead(TestKind.OIL_PRESSURE)
                ? Optional.of(proposals.test(
                        now,
                        TestKind.OIL_PRESSURE,
                        "Oil pressure, hot idle, by a mechanical gauge",
                        "It knocks at 2500 rpm; worn bearings also lose oil pressure.",
                        "Whether the bottom end is what knocks."))
                : Optional.empty();
    }

    private static boolean lowOil(Situation now) {
        return now.engineSign(TestKind.OIL_PRESSURE)
                .filter(Reading.Sign.class::isInstance)
                .map(Reading.Sign.class::cast)
                .flatMap(Reading.Sign::figure)
                .filter(pressure -> pressure.in(Unit.PSI) < LOW_OIL_PSI)
                .isPresent();
    }

    /** What was heard of knock last; other observations do not speak of it. */
    private static boolean knocks(Situation now) {
        return now.health().engineSigns().stream()
                .filter(Reading.Sign.class::isInstance)
                .map(Reading.Sign.class::cast)
                .flatMap(sign -> sign.word().stream())
                .filter(word -> word.equals("knock-at-2500") || word.equals("no-knock"))
                .reduce((earlier, later) -> later)
                .filter("knock-at-2500"::equals)
                .isPresent();
    }
}
