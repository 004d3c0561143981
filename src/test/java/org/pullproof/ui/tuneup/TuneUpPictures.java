package org.pullproof.ui.tuneup;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.BadFileException;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.Setting;
import org.pullproof.ui.NoPictures;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** The sheet Tune-up for tests; no picture is asked for. */
public final class TuneUpPictures {
    private static final String V8 = "v8-distributor-order-a";
    private static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 10, 0);

    private TuneUpPictures() {}

    public static TuneUpSheet sheet(SessionViewModel session, Toolbox tools) {
        return new TuneUpSheet(new TuneUpViewModel(session, tools, SheetFixture.CLOCK), new NoPictures(), () -> {});
    }

    /** An invented V8 in the middle of plugs and wires: shelf, settings, parts and a swapped pair of wires. */
    public static OpenSession halfDone(Toolbox tools, Path folder) throws BadFileException {
        OpenSession open = tools.desk().create(folder.resolve("car"), "Grey coupé", SheetFixture.profile(V8));
        open = tools.tickStep().want(open, List.of("compression test first"));
        for (String step : List.of("a", "b", "c", "d", "e", "f")) {
            open = tools.tickStep().tick(open, step, WHEN);
        }
        open = tools.shelveParts().add(open, "hose of the canister", WHEN);
        open = tools.shelveParts().note(open, "battery lead", "behind the left wing");
        open = tools.shelveParts().fit(open, "plugs", 1);
        open = tools.shelveParts().fit(open, "plugs", 3);
        open = tools.tickStep().leaveOff(open, "hot-air duct", "a new one comes on Monday");
        open = tools.recordWires().cap(open, List.of(1, 8, 4, 3, 6, 7, 5, 2));
        open = tools.recordPlug().record(open, new PlugRecord(1, gap("0.044"), gap("0.035"), Optional.empty(), "7"));
        open = tools.recordPlug().record(open, new PlugRecord(3, gap("0.052"), gap("0.060"), Optional.empty(), "7"));
        open = tools.recordSettings().edit(open, "Set", TuneUpPictures::set);
        return tools.recordWork().record(open, "rings", List.of(), WHEN);
    }

    private static BaseSettings set(BaseSettings settings) {
        return settings.with(Setting.BASE_TIMING, Optional.of(Quantity.of("10", Unit.DEGREE)))
                .with(Setting.MECHANICAL, Optional.of(Quantity.of("22", Unit.DEGREE)))
                .with(Setting.PULL_RPM, Optional.of(Quantity.of("3500", Unit.RPM)))
                .with(Setting.CANISTER_ADVANCE, Optional.of(Quantity.of("12", Unit.DEGREE)))
                .with(Setting.THROTTLE, Optional.of(Quantity.of("91", Unit.PERCENT)))
                .withCurve(List.of(point("800", "0"), point("1600", "8"), point("2800", "20"), point("4000", "22")));
    }

    private static CurvePoint point(String rpm, String degrees) {
        return new CurvePoint(Quantity.of(rpm, Unit.RPM), Quantity.of(degrees, Unit.DEGREE));
    }

    private static Optional<Quantity> gap(String inches) {
        return Optional.of(Quantity.of(inches, Unit.IN));
    }
}
