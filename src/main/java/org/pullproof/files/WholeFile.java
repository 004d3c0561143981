package org.pullproof.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file so that a kill or a full disk leaves the old one or the new one, never half of it: to a file beside it, flushed
 * to the disk, then moved over the old one.
 */
public final class WholeFile {
    /** Moves the finished file over the old one. */
    @FunctionalInterface
    interface Move {
        void move(Path from, Path to) throws IOException;
    }

    private final Move move;

    public WholeFile() {
        this((from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
    }

    WholeFile(Move move) {
        this.move = move;
    }

    /**
     * @throws IOException if anything fails; the old file is then as it was
     */
    public void write(Path target, byte[] bytes) throws IOException {
        Path part = target.resolveSibling(
                target.getFileName() + "." + UUID.randomUUID().toString().substring(0, 8) + ".part");
        try {
            writeFlushed(part, bytes);
            move.move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
        flushFolder(target);
    }

    // Not Files.createTempFile: its mode 600 would stay on the file after the move.
    private static void writeFlushed(Path part, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    // A system that cannot open a folder (Windows) keeps its own order; the file is in place already.
    private static void flushFolder(Path target) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notSupported) {
            System.getLogger(WholeFile.class.getName())
                    .log(System.Logger.Level.DEBUG, "The folder was not flushed", notSupported);
        }
    }
}
