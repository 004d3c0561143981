package org.pullproof.robustness;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.pullproof.app.AddPulls;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.BadFileException;
import org.pullproof.files.KeptVersion;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;

/** A day at the bench that writes in every way the program writes, and what each act promises once it is told to be done. */
final class CutDay {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);

    /**
     * An act told to be done.
     *
     * @param place the folder of a session below the top of the disk, or a zip
     * @param session what lies there from now on
     */
    record Promise(String place, Session session) {}

    private final List<Promise> promises = new ArrayList<>();
    private final Path outside;

    private CutDay(Path outside) {
        this.outside = outside;
    }

    /** The files that come from elsewhere, in a folder where nothing is cut. */
    static CutDay with(Path outside) throws IOException, BadFileException {
        Path pull = Path.of("src/test/resources/org/pullproof/dyno/A1_plain_hp_lbft.csv");
        Files.write(outside.resolve("run.csv"), Files.readAllBytes(pull));
        ImageIO.write(
                new BufferedImage(8, 6, BufferedImage.TYPE_INT_RGB),
                "jpg",
                outside.resolve("gauge.jpg").toFile());
        CutDay day = new CutDay(outside);
        Toolbox tools = Tools.with(outside.resolve("config"));
        OpenSession open = tools.desk().create(outside.resolve("lent"), "lent", Tools.profile("i4-distributor"));
        open = day.withPull(tools, open);
        tools.share().share(open.folder(), outside.resolve("lent.zip"));
        return day;
    }

    /** The acts told to be done, in order. */
    List<Promise> promises() {
        return List.copyOf(promises);
    }

    private OpenSession withPull(Toolbox tools, OpenSession open) throws BadFileException {
        AddPulls.Wanted wanted = new AddPulls.Wanted(
                List.of(outside.resolve("run.csv")),
                Optional.empty(),
                Optional.of(NOON),
                Map.of(),
                List.of(),
                Optional.empty());
        return tools.addPulls().add(open, wanted).open();
    }

    /** Lives the day on a disk; what is promised before the power goes is in {@link #promises}. */
    void live(Path disk) throws BadFileException {
        promises.clear();
        Toolbox tools = Tools.with(disk.resolve("config"));
        OpenSession open =
                told("car", tools.desk().create(disk.resolve("car"), "car", Tools.profile("i4-distributor")));
        open = told("car", tools.setFacts().set(tools.desk().openToEdit(open.folder()), Map.of("runs", "dies")));
        open = told("car", withPull(tools, open));
        open = told(
                "car",
                tools.attachPicture()
                        .attach(open, new About(About.Kind.CAR, ""), "", outside.resolve("gauge.jpg"), NOON));
        open = told("car", tools.desk().undo(open));
        open = told("car", tools.desk().redo(open));
        open = told("copy", tools.desk().copyTo(open, disk.resolve("copy")));
        open = told("copy", tools.setFacts().set(open, Map.of("runs", "no")));
        share(tools, open, disk);
        String first = tools.keptSittings().all(open).get(0).version().name();
        open = told("copy", tools.keptSittings().back(open, first));
        share(tools, open, disk);
        Path lent = tools.share().unpack(outside.resolve("lent.zip"));
        told("config/sessions/lent", tools.desk().openToEdit(lent));
        Path demo = tools.demos().copy(Path.of("demo-sessions", "grey-coupe"));
        told(
                demo.toString().substring(disk.toString().length() + 1),
                tools.desk().openToEdit(demo));
        tools.desk().letGo();
    }

    private void share(Toolbox tools, OpenSession open, Path disk) throws BadFileException {
        tools.share().share(open.folder(), disk.resolve("car.zip"));
        told("car.zip", open);
    }

    private OpenSession told(String place, OpenSession open) {
        promises.add(new Promise(place, open.session()));
        return open;
    }

    /**
     * Looks at what the disk has when the power is back.
     *
     * @param all the promises of a whole day
     * @return what is lost or half there, in words
     */
    List<String> broken(List<Promise> all, Path found) throws IOException {
        List<String> wrong = new ArrayList<>();
        for (String place : all.stream().map(Promise::place).distinct().toList()) {
            List<Session> kept = sessionsOf(promises, place);
            List<Session> right = new ArrayList<>(kept.subList(Math.max(0, kept.size() - 1), kept.size()));
            right.addAll(sessionsOf(all.subList(promises.size(), Math.min(promises.size() + 1, all.size())), place));
            try {
                Path there = found.resolve(place);
                if (holds(there)) {
                    look(place, there, right, wrong);
                } else if (!kept.isEmpty()) {
                    wrong.add(place + " was promised and is gone");
                }
            } catch (BadFileException lost) {
                wrong.add(place + ": " + lost.getMessage());
            }
        }
        return wrong;
    }

    private static List<Session> sessionsOf(List<Promise> promises, String place) {
        return promises.stream()
                .filter(promise -> promise.place().equals(place))
                .map(Promise::session)
                .toList();
    }

    private static boolean holds(Path there) {
        return there.toString().endsWith(".zip") ? Files.exists(there) : new SessionFolder(there).holdsSession();
    }

    private void look(String place, Path there, List<Session> right, List<String> wrong)
            throws IOException, BadFileException {
        Toolbox tools = Tools.with(Files.createTempDirectory(outside, "after-"));
        boolean isZip = there.toString().endsWith(".zip");
        OpenSession open = tools.desk().open(isZip ? tools.share().unpack(there) : there);
        if (!right.contains(open.session())) {
            wrong.add(place + " holds another session than was promised");
        }
        open.problems().forEach(problem -> wrong.add(place + ": " + problem));
        SessionFolder folder = new SessionFolder(open.folder());
        for (Picture picture : open.session().pictures()) {
            folder.photograph(picture);
        }
        for (KeptVersion version : folder.versions()) {
            folder.read(version);
        }
    }
}
