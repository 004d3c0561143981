package org.pullproof.robustness.cut;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/**
 * What a disk holds for certain, and what the system still holds back. POSIX.1-2017 promises no more: {@code fsync} of a file puts
 * down its bytes, {@code fsync} of a folder its names; {@code rename} is seen whole or not at all. In which order the rest
 * reaches the disk, and whether it does, is open.
 */
final class Platter {
    /** A file or a folder, whatever its name is. */
    private abstract static class Node {
        abstract void layOut(Path target, Luck luck) throws IOException;
    }

    private static final class Bytes extends Node {
        private byte[] seen = {};
        private byte[] certain = {};

        @Override
        void layOut(Path target, Luck luck) throws IOException {
            Files.write(target, luck.bytes(seen, certain));
        }
    }

    private static final class Folder extends Node {
        private final Map<String, Node> seen = new TreeMap<>();
        private final Map<String, Node> certain = new TreeMap<>();

        @Override
        void layOut(Path target, Luck luck) throws IOException {
            Files.createDirectories(target);
            for (Map.Entry<String, Node> each : certain.entrySet()) {
                each.getValue().layOut(target.resolve(each.getKey()), luck);
            }
        }
    }

    /** A name in a folder that stands for something, or for nothing any more. */
    private record Entry(Folder folder, String name, Optional<Node> node) {
        void putDown() {
            node.ifPresentOrElse(now -> folder.certain.put(name, now), () -> folder.certain.remove(name));
        }

        void show() {
            node.ifPresentOrElse(now -> folder.seen.put(name, now), () -> folder.seen.remove(name));
        }
    }

    private final Path root;
    private final Folder top = new Folder();
    private final List<List<Entry>> heldBack = new ArrayList<>();

    Platter(Path root) {
        this.root = root;
    }

    void create(Path file) {
        change(List.of(new Entry(folder(file), name(file), Optional.of(new Bytes()))));
    }

    void makeFolder(Path folder) {
        change(List.of(new Entry(folder(folder), name(folder), Optional.of(new Folder()))));
    }

    void remove(Path path) {
        change(List.of(new Entry(folder(path), name(path), Optional.empty())));
    }

    void move(Path from, Path to) {
        Node node = node(from);
        change(List.of(
                new Entry(folder(from), name(from), Optional.empty()),
                new Entry(folder(to), name(to), Optional.of(node))));
    }

    private void change(List<Entry> together) {
        together.forEach(Entry::show);
        heldBack.add(together);
    }

    void write(Path file, byte[] whole) {
        ((Bytes) node(file)).seen = whole;
    }

    void putDown(Path path) {
        Node node = node(path);
        if (node instanceof Bytes file) {
            file.certain = file.seen;
        } else if (node instanceof Folder folder) {
            putDownNames(folder);
        }
    }

    private void putDownNames(Folder folder) {
        List<List<Entry>> now = heldBack.stream()
                .filter(together -> together.stream().anyMatch(entry -> entry.folder() == folder))
                .toList();
        now.forEach(together -> together.forEach(Entry::putDown));
        heldBack.removeAll(now);
    }

    private Node node(Path path) {
        Node node = top;
        for (Path name : root.relativize(path)) {
            if (!name.toString().isEmpty()) {
                node = Objects.requireNonNull(((Folder) node).seen.get(name.toString()), path::toString);
            }
        }
        return node;
    }

    private Folder folder(Path path) {
        return (Folder) node(Objects.requireNonNull(path.getParent()));
    }

    private static String name(Path path) {
        return path.getFileName().toString();
    }

    /** Lays out what is found when the power is back; what was held back came through as chance has it. */
    void layOut(Path target, Random chance) throws IOException {
        Luck luck = new Luck(chance);
        heldBack.stream().filter(together -> luck.hasName()).forEach(together -> together.forEach(Entry::putDown));
        top.layOut(target, luck);
    }

    /** Nothing of what was held back came through, or all of it, or the names without the bytes, or some of each. */
    private static final class Luck {
        private final Random chance;
        private final int names;
        private final int bytes;

        Luck(Random chance) {
            this.chance = chance;
            this.names = chance.nextInt(3);
            this.bytes = chance.nextInt(3);
        }

        boolean hasName() {
            return names == 0 || (names == 1 && chance.nextBoolean());
        }

        byte[] bytes(byte[] seen, byte[] certain) {
            if (Arrays.equals(seen, certain) || bytes == 0) {
                return seen;
            }
            return bytes == 1 ? Arrays.copyOf(seen, chance.nextInt(seen.length + 1)) : certain;
        }
    }
}
