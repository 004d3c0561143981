package org.pullproof.robustness;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import org.pullproof.app.OpenSession;
import org.pullproof.app.PullFileReader;
import org.pullproof.app.SessionDesk;
import org.pullproof.car.Fact;
import org.pullproof.files.CsvFile;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Edits a session as fast as it can, a new sitting after every few edits, until it is killed. A program of its own. */
final class Scribbler {
    static final String DONE = "done ";
    private static final int EDITS_A_SITTING = 4;

    private Scribbler() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        SessionDesk desk = new SessionDesk(new PullFileReader(new CsvFile()), Clock.system(ZoneOffset.UTC));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        int miles = miles(desk.open(folder).session()) + 1;
        // the first edit loads the classes; it is not what is to be killed
        desk.edit(desk.openToEdit(folder), drive(miles));
        out.println(String.format(Locale.ROOT, "%s%09d", DONE, miles));
        while (true) {
            OpenSession open = desk.openToEdit(folder);
            for (int edit = 0; edit < EDITS_A_SITTING; edit++) {
                miles++;
                open = desk.edit(open, drive(miles));
                // fixed length, so that a line cut off by the kill is not taken for another number
                out.println(String.format(Locale.ROOT, "%s%09d", DONE, miles));
            }
        }
    }

    static Edit drive(int miles) {
        return new Edit("Drive", session -> session.withCar(session.car().with(Fact.ODOMETER, miles + "mi")));
    }

    /** How many edits were made so far; 0 before the first. */
    static int miles(Session session) {
        String told = session.car().facts().getOrDefault(Fact.ODOMETER, "0mi");
        return Integer.parseInt(told.replace("mi", ""));
    }
}
