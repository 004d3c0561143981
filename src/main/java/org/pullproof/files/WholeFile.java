package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a file so that a kill or a full disk leaves the old one or the new one, never half of it: to a file beside it, flushed
 * to the disk, then moved over the old one.
 */
public final class WholeFile {
    /** Moves the finished file over the old one. */
    @FunctionalInterface
    public interface Move {
        void move(Path from, Path to) throws IOException;
    }

    private static final System.Logger LOG = System.getLogger(WholeFile.class.getName());
    private static final int BUFFER = 1 << 16;
    private static final Pattern PART = Pattern.compile(".*\\.[0-9a-f]{8}\\.part", Pattern.DOTALL);

    private final Move move;

    public WholeFile() {
        this((from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
    }

    /**
     * @param move puts the finished file in its place; a test hands in one that fails
     */
    public WholeFile(Move move) {
        this.move = move;
    }

    /** Writes the part that is then moved into its place. */
    @FunctionalInterface
    interface Filling {
        void into(Path part) throws IOException;
    }

    /**
     * @throws IOException if anything fails; the old file is then as it was
     */
    public void write(Path target, byte[] bytes) throws IOException {
        write(target, FileBytes.of(bytes));
    }

    /**
     * The same for bytes that are never all held.
     *
     * @throws IOException if anything fails; the old file is then as it was
     */
    public void write(Path target, FileBytes bytes) throws IOException {
        put(target, part -> writeFlushed(part, bytes));
    }

    /**
     * The same for a file that something else fills.
     *
     * @param filling makes the file it is given
     * @throws IOException if anything fails; the old file is then as it was
     */
    void write(Path target, Filling filling) throws IOException {
        put(target, part -> {
            filling.into(part);
            Flushed.file(part);
        });
    }

    private void put(Path target, Filling flushed) throws IOException {
        Path part = target.resolveSibling(
                target.getFileName() + "." + UUID.randomUUID().toString().substring(0, 8) + ".part");
        try {
            flushed.into(part);
            move.move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
        Flushed.folder(target.toAbsolutePath().getParent());
    }

    /** Removes from a folder what a kill left of files half written. What cannot be removed does no harm: nothing reads it. */
    static void removeParts(Path folder) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path part : files.filter(WholeFile::isPart).toList()) {
                Files.deleteIfExists(part);
            }
        } catch (IOException failure) {
            LOG.log(System.Logger.Level.DEBUG, "A file half written was not removed", failure);
        }
    }

    private static boolean isPart(Path file) {
        return PART.matcher(String.valueOf(file.getFileName())).matches();
    }

    // Not Files.createTempFile: its mode 600 would stay on the file after the move.
    private static void writeFlushed(Path part, FileBytes bytes) throws IOException {
        try (InputStream in = bytes.open();
                FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            byte[] buffer = new byte[BUFFER];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                write(channel, ByteBuffer.wrap(buffer, 0, read));
            }
            channel.force(true);
        }
    }

    private static void write(FileChannel channel, ByteBuffer left) throws IOException {
        while (left.hasRemaining()) {
            channel.write(left);
        }
    }
}
