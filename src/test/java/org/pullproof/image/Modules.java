package org.pullproof.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The modules of the JDK that the image is linked from. */
final class Modules {
    private static final Path LIST = Path.of("src", "image", "modules.txt");

    private Modules() {}

    /** Those listed; what they need themselves comes with them. */
    static List<String> listed() throws IOException {
        try (Stream<String> lines = Files.lines(LIST)) {
            return lines.filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        }
    }
}
