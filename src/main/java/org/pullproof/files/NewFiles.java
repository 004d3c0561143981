package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Tells which tables have come into a folder and have stopped growing. Each is told once; one written over later is told again.
 * Looks only when asked, so it works on a share of the network too. For one thread at a time.
 */
public final class NewFiles {
    private final Path folder;
    private final Duration still;
    private final Map<Path, Stamp> known;
    private final Map<Path, Seen> growing = new HashMap<>();

    /** What changes while a file is written. */
    private record Stamp(long size, Instant written) {}

    /** A stamp and when it was first seen. */
    private record Seen(Stamp stamp, Instant since) {}

    private NewFiles(Path folder, Duration still, Map<Path, Stamp> known) {
        this.folder = folder;
        this.still = still;
        this.known = known;
    }

    /**
     * Begins to look; what lies there now is not new.
     *
     * @param still how long size and time of a file have to stay as they are
     * @throws BadFileException if the folder cannot be read
     */
    public static NewFiles in(Path folder, Duration still) throws BadFileException {
        return new NewFiles(folder, still, stamps(folder));
    }

    /**
     * The files that are complete now and were not told before, in order of their names.
     *
     * @throws BadFileException if the folder cannot be read any more
     */
    public List<Path> complete(Instant now) throws BadFileException {
        Map<Path, Stamp> there = stamps(folder);
        growing.keySet().retainAll(there.keySet());
        List<Path> complete = new ArrayList<>();
        there.forEach((file, stamp) -> {
            if (!stamp.equals(known.get(file)) && isStill(file, stamp, now)) {
                complete.add(file);
                known.put(file, stamp);
                growing.remove(file);
            }
        });
        complete.sort(Comparator.comparing(Path::toString));
        return complete;
    }

    private boolean isStill(Path file, Stamp stamp, Instant now) {
        Seen seen = growing.get(file);
        if (seen == null || !seen.stamp().equals(stamp)) {
            growing.put(file, new Seen(stamp, now));
            return false;
        }
        return stamp.size() > 0 && !now.isBefore(seen.since().plus(still));
    }

    private static Map<Path, Stamp> stamps(Path folder) throws BadFileException {
        Map<Path, Stamp> stamps = new HashMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(NewFiles::isTable).toList()) {
                add(stamps, file);
            }
        } catch (IOException gone) {
            throw new BadFileException(
                    folder.toString(), "", Reason.of(gone) + "; the folder is not watched any more.");
        }
        return stamps;
    }

    /** One that vanishes between two looks is left out. */
    private static void add(Map<Path, Stamp> stamps, Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            if (now.isRegularFile()) {
                stamps.put(file, new Stamp(now.size(), now.lastModifiedTime().toInstant()));
            }
        } catch (IOException vanished) {
            stamps.remove(file);
        }
    }

    private static boolean isTable(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && Stream.of(".csv", ".txt", ".tsv").anyMatch(name::endsWith);
    }
}
