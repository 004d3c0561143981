package org.pullproof.ui.health;

import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.OddReading;
import org.pullproof.health.RunField;
import org.pullproof.health.TestKind;
import org.pullproof.session.Judgement;
import org.pullproof.ui.NoPictures;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;

/** The sheet Health for pictures. */
public final class HealthPictures {
    private HealthPictures() {}

    public static Sheet sheet(SessionViewModel session, int cylinder) {
        return sheet(session, cylinder, TestKind.COMPRESSION_DRY);
    }

    public static Sheet sheet(SessionViewModel session, int cylinder, TestKind kind) {
        return sheet(session, cylinder, kind, fender(session));
    }

    private static Sheet sheet(SessionViewModel session, int cylinder, TestKind kind, FenderViewModel fender) {
        HealthViewModel model = new HealthViewModel(session, rules(session), new TypedReadings());
        model.entry().cylinderProperty().set(cylinder);
        model.entry().testProperty().set(kind);
        return new HealthSheet(
                model,
                fender,
                tdcModel(session),
                SheetFixture.cautions()::of,
                HealthPictures::printNothing,
                new NoPictures());
    }

    static TdcViewModel tdcModel(SessionViewModel session) {
        return new TdcViewModel(session, SheetFixture.cautions().of("air-in-cylinder"));
    }

    private static void printNothing(TestKind test) {}

    private static ReadingRules rules(SessionViewModel session) {
        return new SheetReadingRules(() -> session.session().profile(), SheetFixture.CLOCK);
    }

    static FenderViewModel fender(SessionViewModel session) {
        return new FenderViewModel(
                session,
                rules(session),
                new TypedReadings(),
                () -> new OddReading(new TradeConstants().health(Judgement.own())),
                FenderCautions.of(SheetFixture.cautions()),
                () -> LocalDate.now(SheetFixture.CLOCK));
    }

    /** The sheet with its TDC guide open. */
    public static Sheet tdc(SessionViewModel session, int cylinder) {
        Sheet sheet = sheet(session, cylinder, TestKind.LEAKDOWN);
        sheet.key(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.F3, false, false, false, false));
        return sheet;
    }

    /** The sheet in fender mode before the first reading. */
    public static Sheet fenderBefore(SessionViewModel session, TestKind kind) {
        return fender(session, kind, fender -> {});
    }

    /** The sheet in fender mode after some figures, each followed by Enter. */
    public static Sheet fenderTyped(SessionViewModel session, TestKind kind, String... figures) {
        return fender(session, kind, fender -> {
            if (kind == TestKind.COMPRESSION_DRY) {
                fender.setting().put(RunField.STROKES, "6");
                fender.setting().put(RunField.THROTTLE, "open");
                fender.setting().put(RunField.PLUGS, "all-out");
                fender.setting().put(RunField.CRANKING_VOLTS, "10.6 V");
                fender.setting().put(RunField.GAUGE, "1");
            }
            fender.begin();
            for (String figure : figures) {
                figure.chars().forEach(key -> fender.type((char) key));
                fender.enter();
            }
        });
    }

    private static Sheet fender(SessionViewModel session, TestKind kind, Consumer<FenderViewModel> then) {
        FenderViewModel fender = fender(session);
        Sheet sheet = sheet(session, 1, kind, fender);
        fender.open(kind, OptionalInt.empty());
        then.accept(fender);
        return sheet;
    }
}
