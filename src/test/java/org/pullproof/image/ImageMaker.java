package org.pullproof.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import org.pullproof.testing.FileTree;

/** Makes the image {@code pullproof} from the program's folder {@code target/pullproof}; needs no display. */
public final class ImageMaker {
    /** How the program is started in it; {@code $APPDIR} is the folder of its jars. */
    private static final List<String> OPTIONS = List.of(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            // a folder that was moved has an archive that no longer fits; nobody needs to read so
            "-Xlog:disable",
            "-Xlog:all=error:stderr",
            "-XX:SharedArchiveFile=$APPDIR/classes.jsa",
            "-Dpullproof.home=$APPDIR");

    private static final Path PARTS = Path.of("src", "image");

    private final Path dist;
    private final Path out;

    private ImageMaker(Path dist, Path out) {
        this.dist = dist;
        this.out = out;
    }

    /**
     * @param arguments the program's folder, the folder in which the image is made anew, the bill of its materials
     */
    public static void main(String[] arguments) throws IOException {
        new ImageMaker(Path.of(arguments[0]), Path.of(arguments[1])).make();
        BillOfMaterials.copy(Path.of(arguments[2]), Path.of(arguments[1]).resolve("pullproof/bom.json"));
    }

    private void make() throws IOException {
        Files.createDirectories(out);
        FileTree.delete(out);
        Files.createDirectories(out);
        Path java = link();
        Path content = out.resolve("content");
        new Content(dist, content).gather();
        new ClassList(java.resolve("bin/java"), dist, out.resolve("walk")).write(content.resolve("classes.lst.gz"));
        pack(java, content);
        finish(out.resolve("pullproof"));
        for (String left : List.of("java", "content", "walk")) {
            FileTree.delete(out.resolve(left));
        }
        System.out.println("Made " + out.resolve("pullproof"));
    }

    private Path link() throws IOException {
        Path java = out.resolve("java");
        run(
                "jlink",
                "--add-modules",
                String.join(",", Modules.listed()),
                "--strip-debug",
                "--no-header-files",
                "--no-man-pages",
                "--compress=2",
                "--output",
                java.toString());
        strip(java.resolve("lib/server/libjvm.so"));
        return java;
    }

    /** jlink leaves the names of the virtual machine's own functions in it; nothing here asks for them. */
    private static void strip(Path machine) throws IOException {
        if (Files.exists(machine)) {
            Child.run("strip", "--strip-unneeded", machine.toString());
        }
    }

    private void pack(Path java, Path content) throws IOException {
        Path icon = Icon.png(PARTS.resolve("pullproof.svg"), out.resolve("pullproof.png"));
        List<String> asked = new ArrayList<>(List.of("--type", "app-image", "--name", "pullproof"));
        asked.addAll(List.of("--input", content.toString(), "--dest", out.toString()));
        asked.addAll(List.of("--runtime-image", java.toString(), "--icon", icon.toString()));
        asked.addAll(List.of("--main-jar", Content.PROGRAM, "--main-class", "org.pullproof.Main"));
        OPTIONS.forEach(option -> asked.addAll(List.of("--java-options", option)));
        run("jpackage", asked.toArray(String[]::new));
        Files.delete(icon);
    }

    private static void finish(Path image) throws IOException {
        Path lib = image.resolve("lib");
        Files.copy(PARTS.resolve("pullproof.desktop"), lib.resolve("pullproof.desktop"));
        Files.copy(PARTS.resolve("quicken"), lib.resolve("quicken"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.copy(PARTS.resolve("install"), image.resolve("install"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.copy(Path.of("LICENSE"), image.resolve("LICENSE"));
        Child.run(lib.resolve("quicken").toString());
    }

    private static void run(String tool, String... arguments) {
        int status = ToolProvider.findFirst(tool)
                .orElseThrow(() -> new IllegalStateException(tool + " is missing: the image needs a full JDK 17"))
                .run(System.out, System.err, arguments);
        if (status != 0) {
            throw new IllegalStateException(tool + " ended with " + status + " on " + List.of(arguments));
        }
    }
}
