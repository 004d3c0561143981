package org.pullproof.robustness.cut;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A file system over a real folder whose power can be cut before any step that changes it. What the program did not flush is then
 * lost or not, as a seed has it. The program sees a disk like any other.
 */
public final class ForgetfulDisk extends FileSystemProvider implements AutoCloseable {
    private final FileSystem system = new ForgetfulSystem(this);
    private final List<FileChannel> open = new ArrayList<>();
    private final Path root;
    private final Platter platter;
    private final long cutBefore;
    private long steps;

    /**
     * @param root a real, empty folder
     * @param cutBefore the step, counted from 1, before which the power is cut
     */
    public ForgetfulDisk(Path root, long cutBefore) {
        this.root = root;
        this.platter = new Platter(root);
        this.cutBefore = cutBefore;
    }

    /** Its uppermost folder. */
    public Path top() {
        return ForgetfulPath.of(system, root);
    }

    /** How many steps changed it so far. */
    public long steps() {
        return steps;
    }

    /** Lays out in a real folder what is found when the power is back. */
    public void layOut(Path target, long seed) throws IOException {
        platter.layOut(target, new Random(seed));
    }

    /** The program is gone, and its locks with it. */
    @Override
    public void close() throws IOException {
        for (FileChannel each : open) {
            each.close();
        }
    }

    void step() {
        steps++;
        if (steps >= cutBefore) {
            throw new PowerCut(cutBefore);
        }
    }

    void written(Path real) throws IOException {
        platter.write(real, Files.readAllBytes(real));
    }

    void flushed(Path real) {
        platter.putDown(real);
    }

    Path lifted(Path real) {
        return ForgetfulPath.of(system, real);
    }

    private static Path real(Path path) {
        return ForgetfulPath.real(path).toAbsolutePath();
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        Path real = real(path);
        boolean isNew = !Files.exists(real);
        if (isNew) {
            step();
        }
        FileChannel channel = FileChannel.open(real, options, attributes);
        open.add(channel);
        if (isNew) {
            platter.create(real);
        }
        return new ForgetfulChannel(this, real, channel);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
        step();
        Files.createDirectory(real(path), attributes);
        platter.makeFolder(real(path));
    }

    @Override
    public void delete(Path path) throws IOException {
        step();
        Files.delete(real(path));
        platter.remove(real(path));
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        step();
        Files.move(real(from), real(to), options);
        platter.move(real(from), real(to));
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        step();
        Files.copy(real(from), real(to), options);
        platter.create(real(to));
        step();
        written(real(to));
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        List<Path> names = new ArrayList<>();
        try (DirectoryStream<Path> below = Files.newDirectoryStream(real(folder))) {
            for (Path each : below) {
                if (filter.accept(lifted(each))) {
                    names.add(lifted(each));
                }
            }
        }
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return names.iterator();
            }

            @Override
            public void close() {}
        };
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return Files.readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options) throws IOException {
        return Files.readAttributes(real(path), names, options);
    }

    @Override
    public <V extends FileAttributeView> @Nullable V getFileAttributeView(
            Path path, Class<V> type, LinkOption... options) {
        return Files.getFileAttributeView(real(path), type, options);
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        Path real = real(path);
        real.getFileSystem().provider().checkAccess(real, modes);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return Files.isSameFile(real(one), real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return Files.isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return Files.getFileStore(real(path));
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options) throws IOException {
        Files.setAttribute(real(path), name, value, options);
    }

    @Override
    public String getScheme() {
        return "forgetful";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException("It is made by its constructor");
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException("Paths are taken from its top");
    }
}
