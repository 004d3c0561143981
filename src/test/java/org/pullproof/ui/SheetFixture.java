package org.pullproof.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.ProfileShelf;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.History;
import org.pullproof.ui.shell.Look;
import org.pullproof.ui.shell.SessionServices;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** An invented session and its answers for tests of the sheets; the answers are made up, not computed. */
public final class SheetFixture {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-14T14:02:00Z"), ZoneOffset.UTC);
    private static final LocalDateTime TAKEN = LocalDateTime.of(2026, 6, 13, 13, 52);

    private SheetFixture() {}

    /** The program's own cautions. */
    public static Cautions cautions() {
        TradeFiles trade = new TradeFiles();
        return new Cautions(trade.cautions(), trade.lastCaution());
    }

    /** One of the program's own profiles. */
    public static EngineProfile profile(String id) {
        try {
            return new ProfileShelf(Path.of("profiles")).find(id);
        } catch (BadFileException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    /** A view-model whose acts are done at once and whose answers come from {@code appraiser}. */
    public static SessionViewModel model(OpenSession open, SessionServices.Appraiser appraiser) {
        Look look = new Look(UnitSystem.US, false);
        SessionServices services = new SessionServices(
                now -> with(now, now.history().undo()),
                now -> with(now, now.history().redo()),
                appraiser);
        return new SessionViewModel(
                open, appraiser.appraise(open, look.figures()), services, new ImmediateRunner(), look, CLOCK);
    }

    private static OpenSession with(OpenSession open, History history) {
        return new OpenSession(open.folder(), history, open.traces(), open.problems());
    }

    /** The answers of an untouched session with another answer of Health. */
    public static Appraisal withHealth(OpenSession open, Figures figures, HealthFindings health) {
        Appraisal plain = UiFixture.appraise(open, figures);
        return new Appraisal(
                plain.session(),
                figures,
                plain.carAnswer(),
                health,
                plain.tuneUp(),
                plain.dyno(),
                plain.changes(),
                plain.worth(),
                plain.day(),
                plain.next(),
                plain.stages());
    }

    /** Eight cylinders of which the sixth is low. */
    public static HealthFindings oneLow(OpenSession open) {
        List<CylinderFindings> cylinders = new ArrayList<>();
        double[] drop = {62, 58, 65, 60, 63, 19, 57, 61};
        int[] first = {85, 88, 84, 86, 85, 58, 86, 84};
        int[] dry = {158, 162, 155, 160, 157, 92, 159, 156};
        for (int i = 0; i < 8; i++) {
            cylinders.add(cylinder(
                    i + 1, i == 5 ? State.LOW : State.LEVEL, drop[i], psi(first[i]), psi(dry[i]), i == 5 ? 93 : -1));
        }
        return new HealthFindings(
                Verdict.NOT_SOUND,
                new Sentence("**Not sound.** Cylinder 6 leaks at a valve; the other seven agree within 5 %."),
                List.of(
                        "Cylinder 6 reads 92 psi where the others read 155 to 162 psi.",
                        "Air is heard at the exhaust; oil in the cylinder changes nothing."),
                List.of("The throttle was not recorded for cylinder 2; it is taken as open like the others."),
                List.of(),
                OptionalDouble.of(43.2),
                List.of(
                        new Rule(
                                "lowest within 75 % of the highest",
                                false, "common practice, no source", "lowest 92 psi is 57 % of the highest, 162 psi"),
                        new Rule("none below 100 psi", false, "common practice, no source", "lowest 92 psi")),
                cylinders,
                signs(open.session().readings()),
                FaultFindings.none());
    }

    private static List<Reading> signs(List<Reading> readings) {
        return readings.stream().filter(reading -> reading.cylinder().isEmpty()).toList();
    }

    private static CylinderFindings cylinder(
            int number, State state, double drop, Quantity first, Quantity dry, double leak) {
        boolean low = state == State.LOW;
        return new CylinderFindings(
                number,
                state,
                low ? "low, air at the exhaust" : "level with the others",
                Optional.of(dry),
                OptionalDouble.empty(),
                Optional.of(first),
                low ? Optional.of(psi(95)) : Optional.empty(),
                OptionalInt.of(6),
                leak > 0 ? OptionalDouble.of(leak) : OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                low ? Set.of(AirPlace.EXHAUST) : Set.of(),
                OptionalDouble.of(drop),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
    }

    public static Quantity psi(int figure) {
        return Quantity.of(String.valueOf(figure), Unit.PSI);
    }

    public static Reading compression(int cylinder, int psi) {
        Conditions made = new Conditions(
                OptionalInt.of(6),
                Optional.of(Conditions.Throttle.OPEN),
                Optional.of(Conditions.Plugs.ALL_OUT),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new Reading.Compression(OptionalInt.of(cylinder), false, psi(psi), Optional.empty(), 1, made, TAKEN, "");
    }

    public static Reading sign(TestKind test, String word) {
        return new Reading.Sign(
                test, OptionalInt.empty(), Optional.empty(), Optional.of(word), Conditions.notRecorded(), TAKEN, "");
    }
}
