package org.pullproof.image;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import org.pullproof.Main;
import org.pullproof.start.FrameWatch;
import org.pullproof.testing.FileTree;

/**
 * The classes that are loaded until the window stands, and by a command, for the archive from which they come quickly. This needs
 * no display: the window is drawn in memory. The classes that only a real screen asks for are added by name.
 */
final class ClassList {
    private static final List<String> OF_A_SCREEN = List.of("com/sun/glass/ui/gtk/", "com/sun/prism/es2/");

    /** Sheets that are looked at later, and sums: the archive is the largest thing in the image, and it is there for the start. */
    private static final Pattern LATER = Pattern.compile(
            "org/pullproof/ui/(dynoday|changes|worth|tuneup|health|values|kept)/|org/apache/commons/math3/");

    private final Path java;
    private final Path dist;
    private final Path work;

    /**
     * @param java the image's own Java
     * @param dist the program's folder
     * @param work a folder for what the program leaves
     */
    ClassList(Path java, Path dist, Path work) {
        this.java = java;
        this.dist = dist;
        this.work = work;
    }

    /** Writes the list, packed: it is needed again only where the image was moved. */
    void write(Path list) throws IOException {
        Files.createDirectories(work);
        SortedSet<String> classes = new TreeSet<>();
        Path demo = dist.resolve("demo-sessions/grey-coupe");
        classes.addAll(
                loaded(FrameWatch.class.getName(), "sheet-frame", Main.class.getName(), "open", demo.toString()));
        classes.addAll(loaded(Main.class.getName(), "next", demo.toString()));
        classes.addAll(ofAScreen());
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(list))) {
            out.write(String.join("\n", classes).getBytes(StandardCharsets.UTF_8));
        }
    }

    private List<String> loaded(String... program) throws IOException {
        Path list = work.resolve("loaded.lst");
        List<String> command = new ArrayList<>(List.of(java.toString(), "-XX:DumpLoadedClassList=" + list));
        command.addAll(List.of("-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dprism.order=sw"));
        command.add("-Dpullproof.home=" + dist);
        command.add("-Dpullproof.config=" + work.resolve("config"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(program));
        Child.run(command.toArray(String[]::new));
        try (var lines = Files.lines(list)) {
            return lines.filter(ClassList::isOfTheProgram).toList();
        }
    }

    /** What watches and the screen in memory are not in the image. */
    private static boolean isOfTheProgram(String line) {
        return !line.startsWith("#")
                && !line.contains("org/pullproof/start/")
                && !line.contains("/monocle/")
                && !LATER.matcher(line).find();
    }

    private List<String> ofAScreen() throws IOException {
        List<String> classes = new ArrayList<>();
        for (String name : FileTree.names(dist.resolve("lib"))) {
            try (JarFile jar = new JarFile(dist.resolve("lib").resolve(name).toFile())) {
                jar.stream()
                        .map(ZipEntry::getName)
                        .filter(entry -> entry.endsWith(".class"))
                        .filter(entry -> OF_A_SCREEN.stream().anyMatch(entry::startsWith))
                        .map(entry -> entry.substring(0, entry.length() - ".class".length()))
                        .forEach(classes::add);
            }
        }
        return classes;
    }
}
