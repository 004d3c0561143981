package org.pullproof.robustness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.robustness.cut.ForgetfulDisk;
import org.pullproof.robustness.cut.PowerCut;
import org.pullproof.testing.FileTree;

/** Cuts the power in a {@link CutDay} before any step that changes the disk, and looks at what is there afterwards. */
final class Cuts {
    private final Path place;
    private final CutDay day;
    private final List<CutDay.Promise> whole;
    private final long steps;

    /**
     * @param place an empty folder
     */
    Cuts(Path place) throws IOException, BadFileException {
        this.place = place;
        this.day = CutDay.with(Files.createDirectory(place.resolve("outside")));
        try (ForgetfulDisk disk = new ForgetfulDisk(Files.createDirectory(place.resolve("whole")), Long.MAX_VALUE)) {
            day.live(disk.top());
            this.steps = disk.steps();
        }
        this.whole = day.promises();
    }

    /** How many steps a day has. */
    long steps() {
        return steps;
    }

    /**
     * Cuts the power once.
     *
     * @param step before which it is cut, from 1
     * @param seed of what came through of that which was not flushed
     * @return what was lost or is half there, in words
     */
    List<String> cut(long step, long seed) throws IOException, BadFileException {
        Path real = Files.createDirectory(place.resolve("disk"));
        Path found = place.resolve("found");
        try (ForgetfulDisk disk = new ForgetfulDisk(real, step)) {
            live(disk);
            disk.layOut(found, seed);
        }
        List<String> wrong = new ArrayList<>();
        day.broken(whole, found).forEach(each -> wrong.add("step " + step + ", seed " + seed + ": " + each));
        FileTree.delete(real);
        FileTree.delete(found);
        return wrong;
    }

    private void live(ForgetfulDisk disk) throws BadFileException {
        try {
            day.live(disk.top());
        } catch (PowerCut gone) {
            // what the day promised up to here is what counts
            return;
        }
    }
}
