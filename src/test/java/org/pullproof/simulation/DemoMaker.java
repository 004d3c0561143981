package org.pullproof.simulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes the demo sessions anew: DEVELOPERS.md tells the command. */
final class DemoMaker {
    private DemoMaker() {}

    /**
     * @param arguments the folder to make them in; it must not hold them yet
     */
    public static void main(String[] arguments) throws IOException {
        make(Path.of(arguments[0]), Files.createTempDirectory("demo-files"));
    }

    static void make(Path demos, Path scratch) throws IOException {
        Files.createDirectories(demos);
        new GreyCoupeStory(new DemoSession(demos.resolve("grey-coupe"), scratch)).tell();
        new GreenHatchStory(new DemoSession(demos.resolve("green-hatch"), scratch)).tell();
        new BlueWagonStory(new DemoSession(demos.resolve("blue-wagon"), scratch)).tell();
    }
}
