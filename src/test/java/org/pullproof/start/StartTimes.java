package org.pullproof.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Times, by turns, the first usable frame of the image with a demo and that of a bare window with one label, both on the image's
 * own Java with its options and its class archive, and prints the medians and their ratio. Needs a display.
 */
public final class StartTimes {
    private final Path image;
    private final Path config;
    private final List<String> java;

    private StartTimes(Path image, Path config) throws IOException {
        this.image = image;
        this.config = config;
        this.java = command();
    }

    /**
     * @param arguments the image's folder, how often each is started
     */
    public static void main(String[] arguments) throws IOException {
        Path config = Files.createTempDirectory("pullproof-start");
        new StartTimes(Path.of(arguments[0]).toAbsolutePath(), config).time(Integer.parseInt(arguments[1]));
    }

    private void time(int times) throws IOException {
        List<Long> bare = new ArrayList<>();
        List<Long> demo = new ArrayList<>();
        once("label", BareWindow.class.getName());
        demo();
        for (int time = 0; time < times; time++) {
            bare.add(once("label", BareWindow.class.getName()));
            demo.add(demo());
        }
        System.out.printf(
                Locale.ROOT,
                "bare window %d ms, demo %d ms (medians of %d), ratio %.2f%n",
                median(bare),
                median(demo),
                times,
                (double) median(demo) / median(bare));
    }

    private long demo() throws IOException {
        Path demo = image.resolve("lib/app/demo-sessions/grey-coupe");
        return once("sheet-frame", "org.pullproof.Main", "open", demo.toString());
    }

    /** The image's options and class path; what is not in the image stands behind it, so that its archive still fits. */
    private List<String> command() throws IOException {
        Path app = image.resolve("lib/app");
        List<String> settings;
        try (Stream<String> lines = Files.lines(app.resolve("pullproof.cfg"))) {
            settings =
                    lines.map(line -> line.replace("$APPDIR", app.toString())).toList();
        }
        List<String> command =
                new ArrayList<>(List.of(image.resolve("lib/runtime/bin/java").toString()));
        command.addAll(values(settings, "java-options="));
        command.add("-Dpullproof.config=" + config);
        String jars = String.join(":", values(settings, "app.classpath="));
        command.addAll(
                List.of("-cp", jars + ":" + Path.of("target", "test-classes").toAbsolutePath()));
        command.add(FrameWatch.class.getName());
        return command;
    }

    private static List<String> values(List<String> settings, String key) {
        return settings.stream()
                .filter(line -> line.startsWith(key))
                .map(line -> line.substring(key.length()))
                .toList();
    }

    /** Milliseconds from before the process is begun to the frame. */
    private long once(String... watched) throws IOException {
        List<String> command = new ArrayList<>(java);
        Collections.addAll(command, watched);
        long begun = System.currentTimeMillis();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return said.lines()
                .filter(line -> line.startsWith(FrameWatch.USABLE))
                .map(line -> Long.parseLong(line.substring(FrameWatch.USABLE.length())) - begun)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "No window came from " + String.join(" ", command) + "; a display has to be named. It said: "
                                + said.lines().collect(Collectors.joining(" / "))));
    }

    private static long median(List<Long> times) {
        return times.stream().sorted().skip(times.size() / 2).findFirst().orElseThrow();
    }
}
