package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import org.pullproof.app.PrepareDay;
import org.pullproof.app.SessionDesk;
import org.pullproof.app.WatchFolder;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.session.Edit;
import org.pullproof.session.Problem;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.shell.Act;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;

/** The sheet Dyno day for tests; its acts write nothing to the disk and remember the files they were given. */
public final class DynoPictures {
    private DynoPictures() {}

    public static Sheet sheet(SessionViewModel session) {
        return new DynoDaySheet(
                model(session, new Acts()),
                day(session),
                watch(model(session, new Acts())),
                List::of,
                picture -> {},
                SheetFixture.cautions().of("dyno-pull"));
    }

    /** The sheet while air is typed that cannot be: an altimeter setting as station pressure. */
    public static Sheet airBeingTyped(SessionViewModel session) {
        DynoDayViewModel model = model(session, new Acts());
        Sheet sheet = new DynoDaySheet(model, day(session), watch(model), List::of, picture -> {}, List.of());
        model.air().read();
        type(sheet, "#air-elevation", "5250");
        type(sheet, "#air-pressure", "30.02");
        type(sheet, "#air-temperature", "88");
        type(sheet, "#air-humidity", "22");
        return sheet;
    }

    private static void type(Sheet sheet, String id, String text) {
        TextField field = (TextField) sheet.node().lookup(id);
        field.setText(text);
        ((CheckedField<?>) field.getParent()).take();
    }

    /** Nothing is done to the day in pictures. */
    static DayViewModel day(SessionViewModel session) {
        return new DayViewModel(
                session,
                new DeskDayActs(new PrepareDay(new SessionDesk(
                        (name, bytes, how) -> {
                            throw new IllegalStateException("no pull is read");
                        },
                        SheetFixture.CLOCK))),
                SheetFixture.CLOCK);
    }

    /** Watches by hand only. */
    static WatchViewModel watch(DynoDayViewModel model) {
        return new WatchViewModel(
                new WatchFolder((period, act) -> () -> {}, SheetFixture.CLOCK), model.takingIn(), Runnable::run);
    }

    static DynoDayViewModel model(SessionViewModel session, DynoActs acts) {
        AirViewModel air = new AirViewModel(session, acts, new Correction(), new AirCheck(), SheetFixture.CLOCK);
        return new DynoDayViewModel(session, acts, air, Runnable::run);
    }

    static final class Acts implements DynoActs {
        final List<Path> taken = new ArrayList<>();
        String setup = "";

        @Override
        public Act recordAir(AirReading reading) {
            return open -> UiFixture.after(open, new Edit("Record the air", session -> {
                List<AirReading> air = new ArrayList<>(
                        session.days().isEmpty()
                                ? List.of()
                                : session.days().get(0).air());
                air.add(reading);
                List<Pull> pulls = session.days().isEmpty()
                        ? List.of()
                        : session.days().get(0).pulls();
                return session.withDays(List.of(new DynoDay(reading.time().toLocalDate(), air, pulls)));
            }));
        }

        @Override
        public Act addPulls(Taking taking, Heard heard) {
            return open -> {
                Path first = taking.files().get(0);
                heard.left(List.of(new Problem(first.toString(), "line 9", "the row is not a sample")));
                if (first.toString().endsWith(".pdf")) {
                    throw new IllegalArgumentException(first + ": the file has no rpm column");
                }
                taken.addAll(taking.files());
                setup = taking.setup();
                return open;
            };
        }

        @Override
        public Act exclude(Pull pull, String reason) {
            return replaced(pull, Optional.of(reason));
        }

        @Override
        public Act include(Pull pull) {
            return replaced(pull, Optional.empty());
        }

        @Override
        public Act tellStated(String words) {
            return open -> UiFixture.after(
                    open,
                    new Edit(
                            "Set seller-figure",
                            session -> session.withStated(
                                    words.isBlank() ? Optional.empty() : Optional.of(StatedFigure.parse(words)))));
        }

        private static Act replaced(Pull pull, Optional<String> excluded) {
            Pull next = pull.withExcluded(excluded);
            return open -> UiFixture.after(open, new Edit("Exclude " + pull.id(), session -> {
                DynoDay day = session.days().get(0);
                List<Pull> pulls = day.pulls().stream()
                        .map(other -> other.id().equals(pull.id()) ? next : other)
                        .toList();
                return session.withDays(List.of(new DynoDay(day.date(), day.air(), pulls)));
            }));
        }
    }
}
