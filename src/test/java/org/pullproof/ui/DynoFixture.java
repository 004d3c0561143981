package org.pullproof.ui;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeJudge;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.History;
import org.pullproof.session.Judgement;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;

/** An invented day on the dyno: base, two timings and a main jet, eleven pulls with seeded scatter. */
public final class DynoFixture {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);
    private static final String[] ORDER = {
        "base", "base", "base", "timing-32", "timing-32", "timing-32", "base", "base", "timing-35", "timing-35", "jets"
    };
    private static final Map<String, Double> LEVEL =
            Map.of("base", 1.0, "timing-32", 1.03, "timing-35", 1.031, "jets", 0.985);

    private DynoFixture() {}

    public static OpenSession open() {
        Session begun = UiFixture.open().session();
        List<Setup> setups = List.of(
                Setup.named("base", "base"),
                Setup.named("timing-32", "timing 32°"),
                Setup.named("timing-35", "timing 35°"),
                Setup.named("jets", "jets two up"));
        List<Change> changes = List.of(
                change("base", "timing-32", "Total timing 26° to 32°", Optional.of(Money.of(0, "USD"))),
                change("timing-32", "base", "Back to base", Optional.empty()),
                change("base", "timing-35", "Total timing 26° to 35°", Optional.of(Money.of(0, "USD"))),
                change("timing-35", "jets", "Main jets two sizes up", Optional.of(Money.of(18, "USD"))));
        Session session =
                begun.withSetups(setups, "jets", changes).withDays(List.of(new DynoDay(DAY, List.of(air()), pulls())));
        return new OpenSession(Path.of("nowhere"), History.of(session), traces(), List.of());
    }

    private static Change change(String from, String to, String what, Optional<Money> cost) {
        return new Change(from, to, what, DAY.atTime(13, 0), cost, Set.of());
    }

    public static AirReading air() {
        return new AirReading(
                LocalDateTime.of(2026, 6, 14, 13, 40),
                Quantity.of("98.6", Unit.KPA),
                Quantity.of("27.0", Unit.CELSIUS),
                Quantity.of("55", Unit.PERCENT));
    }

    private static List<Pull> pulls() {
        List<Pull> pulls = new ArrayList<>();
        Map<String, Integer> numbers = new HashMap<>();
        for (int i = 0; i < ORDER.length; i++) {
            int number = numbers.merge(ORDER[i], 1, Integer::sum);
            pulls.add(new Pull(
                    ORDER[i],
                    number,
                    new PullFile(
                            "run" + i + ".csv",
                            "run" + i + ".csv",
                            "0123456789a".substring(i, i + 1).repeat(64)),
                    DAY.atTime(13, 42).plusMinutes(5L * i),
                    List.of(),
                    Optional.empty(),
                    i == 9 ? Optional.of("belt slipped") : Optional.empty()));
        }
        return pulls;
    }

    private static Map<String, Trace> traces() {
        Random random = new Random(11);
        Map<String, Trace> traces = new HashMap<>();
        pulls().forEach(pull -> traces.put(
                pull.id(), trace(LEVEL.getOrDefault(pull.setup(), 1.0) * (1 + 0.004 * random.nextGaussian()))));
        return traces;
    }

    private static Trace trace(double level) {
        int samples = 161;
        double[] rpm = new double[samples];
        double[] watt = new double[samples];
        for (int i = 0; i < samples; i++) {
            rpm[i] = 2000 + 20.0 * i;
            watt[i] = level * 150e3 * (1 - Math.pow((rpm[i] - 4400) / 3600, 2)) * (1 + 0.01 * Math.sin(rpm[i] / 300));
        }
        return Trace.of(rpm, watt);
    }

    /** The answers of Dyno day and Changes computed, all others made up. */
    public static Appraisal appraise(OpenSession open, Figures figures) {
        Session session = open.session();
        DynoFindings dyno = new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        session.days(),
                        session.setups(),
                        open.traces(),
                        session.standard(),
                        Optional.of(new RpmRange(2600, 5000)),
                        figures);
        ChangeLedger changes = new ChangeJudge()
                .judge(session.setups(), session.changes(), session.presentSetup(), dyno.pulls(), 1, figures);
        Appraisal plain = UiFixture.appraise(open, figures);
        return new Appraisal(
                session,
                figures,
                plain.carAnswer(),
                plain.health(),
                plain.tuneUp(),
                dyno,
                changes,
                plain.worth(),
                plain.day(),
                plain.next(),
                plain.stages());
    }
}
