package org.pullproof.robustness.cut;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** Passes everything on, and tells the disk of each write and each flush. */
final class ForgetfulChannel extends FileChannel {
    private final ForgetfulDisk disk;
    private final Path real;
    private final FileChannel channel;

    ForgetfulChannel(ForgetfulDisk disk, Path real, FileChannel channel) {
        this.disk = disk;
        this.real = real;
        this.channel = channel;
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        disk.step();
        int written = channel.write(from);
        disk.written(real);
        return written;
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) throws IOException {
        disk.step();
        long written = channel.write(from, offset, length);
        disk.written(real);
        return written;
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        disk.step();
        int written = channel.write(from, position);
        disk.written(real);
        return written;
    }

    @Override
    public long transferFrom(ReadableByteChannel from, long position, long count) throws IOException {
        disk.step();
        long written = channel.transferFrom(from, position, count);
        disk.written(real);
        return written;
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        disk.step();
        channel.truncate(size);
        disk.written(real);
        return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        disk.step();
        channel.force(metaData);
        disk.flushed(real);
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        return channel.read(into);
    }

    @Override
    public long read(ByteBuffer[] into, int offset, int length) throws IOException {
        return channel.read(into, offset, length);
    }

    @Override
    public int read(ByteBuffer into, long position) throws IOException {
        return channel.read(into, position);
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel to) throws IOException {
        return channel.transferTo(position, count, to);
    }

    @Override
    public long position() throws IOException {
        return channel.position();
    }

    @Override
    public FileChannel position(long at) throws IOException {
        channel.position(at);
        return this;
    }

    @Override
    public long size() throws IOException {
        return channel.size();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException("What is written through memory is not seen");
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        return channel.lock(position, size, shared);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return channel.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        channel.close();
    }
}
