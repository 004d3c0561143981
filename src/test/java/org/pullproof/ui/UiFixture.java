package org.pullproof.ui;

import static org.pullproof.advice.StageProgress.Progress.NOT_BEGUN;
import static org.pullproof.advice.StageProgress.Progress.UNDER_WAY;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.Region;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.NextStep;
import org.pullproof.advice.Stage;
import org.pullproof.advice.StageProgress;
import org.pullproof.app.OpenSession;
import org.pullproof.car.Access;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.PlugSpec;
import org.pullproof.engine.Rotor;
import org.pullproof.health.HealthFindings;
import org.pullproof.session.Edit;
import org.pullproof.session.History;
import org.pullproof.session.Session;
import org.pullproof.testing.Gates;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.ui.help.Guide;
import org.pullproof.ui.shell.ShellActs;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;
import org.pullproof.units.Unit;
import org.pullproof.worth.WorthFindings;

/** An invented session and a hand-made appraisal of it, for tests of the window that need no answer to be right. */
public final class UiFixture {
    private UiFixture() {}

    public static EngineProfile v8() {
        return new EngineProfile(
                "v8-test",
                "V8 90°, odd and even banks, order A",
                Layout.V,
                90,
                List.of(new Bank("A", List.of(1, 3, 5, 7), true), new Bank("B", List.of(2, 4, 6, 8), false)),
                new FiringOrder(List.of(1, 8, 4, 3, 6, 5, 7, 2), List.of(90, 90, 90, 90, 90, 90, 90, 90)),
                Rotor.CLOCKWISE,
                new Geometry(0.1, 0.089, 0.145, 8.5, 60, true),
                new PlugSpec(
                        new Quantity(new BigDecimal("0.033"), Unit.IN),
                        new Quantity(new BigDecimal("0.037"), Unit.IN),
                        Quantity.of(22, Unit.LB_FT),
                        Quantity.of(28, Unit.LB_FT),
                        "14 mm, gasket seat, cast-iron head, dry"),
                Ignition.DISTRIBUTOR,
                FuelSystem.CARBURETTOR,
                false,
                Known.NOT_KNOWN,
                "v8-distributor",
                List.of());
    }

    public static OpenSession open() {
        return new OpenSession(Path.of("nowhere"), History.of(Session.begin("Grey coupé", v8())), Map.of(), List.of());
    }

    /** The open session after an edit, as if written to the disk. */
    public static OpenSession after(OpenSession open, Edit edit) {
        return new OpenSession(open.folder(), open.history().edit(edit), open.traces(), open.problems());
    }

    public static Appraisal appraise(OpenSession open, Figures figures) {
        return new Appraisal(
                open.session(),
                figures,
                new Sentence("A running **5.6 L V8**. With plugs out allowed, compression and leak-down can be done"
                        + " **before you buy**; the lash cannot."),
                Blank.of(HealthFindings.class, new Sentence("**Not settled.** Nothing is measured.")),
                Blank.of(TuneUpFindings.class, new Sentence("Not begun.")),
                Blank.of(DynoFindings.class, new Sentence("**No pull yet.**")),
                Blank.of(ChangeLedger.class, new Sentence("No change yet.")),
                new WorthFindings("USD", Money.of(0, "USD"), List.of(), List.of(), true, new Unweighed()),
                Gates.open(),
                new NextStep(
                        "Balance, cylinder by cylinder",
                        "It needs the engine running and nothing removed. It finds the one weak cylinder of eight.",
                        "Which cylinders deserve compression and leak-down first.",
                        20,
                        Money.of(0, "USD"),
                        Access.START_IT,
                        Stage.HEALTH,
                        List.of("Ground the lead first.", "Wheels chocked, in neutral.")),
                List.of(
                        new StageProgress(Stage.CAR, UNDER_WAY, "access: plugs out"),
                        new StageProgress(Stage.HEALTH, NOT_BEGUN, "nothing measured"),
                        new StageProgress(Stage.TUNE_UP, NOT_BEGUN, "14 steps ready"),
                        new StageProgress(Stage.DYNO_DAY, NOT_BEGUN, "no pull yet"),
                        new StageProgress(Stage.CHANGES, NOT_BEGUN, "no change yet"),
                        new StageProgress(Stage.WORTH_IT, NOT_BEGUN, "too early")));
    }

    /** Nothing to save, and no values to show. */
    public static ShellActs shellActs() {
        return new ShellActs(
                leave -> new Region(),
                () -> {},
                () -> {},
                leave -> new Region(),
                leave -> new Region(),
                Guide.ofTheProgram(),
                List.of());
    }
}
