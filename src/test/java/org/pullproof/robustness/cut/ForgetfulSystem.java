package org.pullproof.robustness.cut;

import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;

/** What a path of the forgetful disk belongs to. */
final class ForgetfulSystem extends FileSystem {
    private final FileSystem below = FileSystems.getDefault();
    private final ForgetfulDisk disk;

    ForgetfulSystem(ForgetfulDisk disk) {
        this.disk = disk;
    }

    @Override
    public FileSystemProvider provider() {
        return disk;
    }

    @Override
    public Path getPath(String first, String... more) {
        return disk.lifted(below.getPath(first, more));
    }

    @Override
    public void close() {
        throw new UnsupportedOperationException("The disk is closed, not its paths");
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return below.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        return List.of(disk.top());
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        return below.getFileStores();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return below.supportedFileAttributeViews();
    }

    @Override
    public PathMatcher getPathMatcher(String syntaxAndPattern) {
        PathMatcher matcher = below.getPathMatcher(syntaxAndPattern);
        return path -> matcher.matches(ForgetfulPath.real(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        return below.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() {
        throw new UnsupportedOperationException("Nothing is watched on this disk");
    }
}
