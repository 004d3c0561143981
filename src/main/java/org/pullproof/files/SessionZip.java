package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * A session in one file, to be handed on: {@code NAME/session.json}, {@code NAME/pulls/…} and {@code NAME/pictures/…} in a zip (PKWARE
 * APPNOTE 6.3). What comes from elsewhere is not trusted: a path that leads out of the session is refused, and so is a file that swells when it is unpacked.
 */
public final class SessionZip {
    /** More entries than any session has pulls. */
    private static final int MOST_ENTRIES = 5_000;

    /** As much as one file of a session may weigh (see {@link SessionFolder}). */
    private static final long MOST_BYTES_OF_A_FILE = 200L * 1024 * 1024;

    /** Hundreds of photographs. */
    private static final long MOST_BYTES = 1024L * 1024 * 1024;

    /** Tables of figures shrink about tenfold; deflate alone can do 1032 to 1 (RFC 1951, zlib's technical notes). */
    private static final long MOST_SWELLING = 100;

    /** Below this nothing swells enough to hurt. */
    private static final long HARMLESS_BYTES = 1024 * 1024;

    /** An entry that belongs to a session, with or without a folder around it. */
    private static final Pattern PART = Pattern.compile("(?:[^/]+/)?(session\\.json|(?:pulls|pictures)/[^/]+)");

    private final Path zip;

    public SessionZip(Path zip) {
        this.zip = zip;
    }

    /** Whether a file is called a zip. */
    public static boolean isNamed(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".zip");
    }

    /**
     * Writes a session into the zip; a file of that name is replaced.
     *
     * @throws BadFileException if there is no session, or the zip could not be written
     */
    public void write(Path session) throws BadFileException {
        new SessionFolder(session).read();
        try {
            writeWhole(session.toAbsolutePath().normalize());
        } catch (IOException failure) {
            throw bad(Reason.of(failure) + "; the session was not shared. Name a file where there is room.");
        }
    }

    private void writeWhole(Path folder) throws IOException {
        List<Path> files = files(folder);
        new WholeFile().write(zip, part -> {
            try (ZipOutputStream out =
                    new ZipOutputStream(Files.newOutputStream(part, StandardOpenOption.CREATE_NEW))) {
                for (Path file : files) {
                    add(out, folder, file);
                }
            }
        });
    }

    private static void add(ZipOutputStream out, Path session, Path file) throws IOException {
        String inside = session.relativize(file).toString().replace('\\', '/');
        out.putNextEntry(new ZipEntry(session.getFileName() + "/" + inside));
        Files.copy(file, out);
        out.closeEntry();
    }

    private static List<Path> files(Path session) throws IOException {
        List<Path> files = new ArrayList<>(List.of(session.resolve("session.json")));
        for (String kept : List.of("pulls", "pictures")) {
            files.addAll(filesIn(session.resolve(kept)));
        }
        return files;
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> kept = Files.list(folder)) {
            return kept.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /**
     * Unpacks the session into a new folder; what lies there already is never touched.
     *
     * @param parent in which the folder is made
     * @return the new folder, named as in the zip; where that name is taken, with a number
     * @throws BadFileException if it is no session, leads out of its folder, or swells; nothing is left behind then
     */
    public Path unpack(Path parent) throws BadFileException {
        Path free = free(parent, folderName());
        try {
            WholeFolder.make(free, "unpacking-", this::unpackInto);
            return free;
        } catch (BadFileException known) {
            throw known;
        } catch (ZipException damaged) {
            throw bad("this is no zip file, or it is damaged; ask for it once more.");
        } catch (IOException failure) {
            throw bad(Reason.of(failure) + "; nothing was unpacked.");
        }
    }

    private void unpackInto(Path session) throws IOException {
        try (ZipFile file = new ZipFile(zip.toFile())) {
            List<? extends ZipEntry> entries = Collections.list(file.entries());
            check(entries);
            long left = mostBytes();
            for (ZipEntry entry : entries) {
                left -= unpack(file, entry, session, left);
            }
        }
        requireSession(session);
    }

    private void check(List<? extends ZipEntry> entries) throws BadFileException {
        if (entries.size() > MOST_ENTRIES) {
            throw bad("it holds " + entries.size() + " files; a session has at most " + MOST_ENTRIES + ".");
        }
        for (ZipEntry entry : entries) {
            if (leadsOut(entry.getName())) {
                throw bad("\"" + entry.getName() + "\" leads out of the session's folder; nothing was unpacked.");
            }
        }
    }

    /** APPNOTE 6.3, 4.4.17: a name has no drive, no leading slash, and only forward slashes. */
    private static boolean leadsOut(String name) {
        return name.startsWith("/")
                || name.contains("\\")
                || name.contains(":")
                || List.of(name.split("/", -1)).contains("..");
    }

    private long mostBytes() throws IOException {
        return Math.min(MOST_BYTES, Math.max(HARMLESS_BYTES, MOST_SWELLING * Files.size(zip)));
    }

    /** Unpacks what belongs to a session and leaves the rest; returns the bytes it took. */
    private long unpack(ZipFile file, ZipEntry entry, Path session, long left) throws IOException {
        Optional<Path> target = target(entry.getName(), session);
        if (target.isEmpty()) {
            return 0;
        }
        try (InputStream in = file.getInputStream(entry)) {
            long most = Math.min(left, MOST_BYTES_OF_A_FILE);
            byte[] bytes = in.readNBytes(Math.toIntExact(most) + 1);
            if (bytes.length > most) {
                throw bad("it swells to more than a session holds (a file 200 MB, all of it 1 GB or " + MOST_SWELLING
                        + " times the zip); nothing was unpacked.");
            }
            Files.createDirectories(target.get().resolveSibling("."));
            Files.write(target.get(), bytes, StandardOpenOption.CREATE_NEW);
            return bytes.length;
        }
    }

    private Optional<Path> target(String name, Path session) throws BadFileException {
        Matcher part = PART.matcher(name);
        if (!part.matches()) {
            return Optional.empty();
        }
        String inside = part.group(1);
        String last = inside.substring(inside.lastIndexOf('/') + 1);
        if (!SafeName.isSafe(last)) {
            throw bad("\"" + name + "\" is no plain file name; nothing was unpacked.");
        }
        return Optional.of(session.resolve(inside));
    }

    private void requireSession(Path session) throws BadFileException {
        if (!new SessionFolder(session).holdsSession()) {
            throw bad("it holds no session: there is no session.json in it.");
        }
        try {
            new SessionFolder(session).read();
        } catch (BadFileException wrong) {
            throw bad("its session cannot be read: " + wrong.problems().get(0).message());
        }
    }

    private String folderName() {
        String name = SafeName.of(String.valueOf(zip.getFileName()), "shared.zip");
        return isNamed(zip) ? name.substring(0, name.length() - ".zip".length()) : name;
    }

    private static Path free(Path parent, String name) {
        Path free = parent.resolve(name);
        for (int number = 2; Files.exists(free); number++) {
            free = parent.resolve(name + "-" + number);
        }
        return free;
    }

    private BadFileException bad(String message) {
        return new BadFileException(zip.toString(), "", message);
    }
}
