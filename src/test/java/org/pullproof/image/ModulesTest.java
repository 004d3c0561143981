package org.pullproof.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.lang.module.ResolvedModule;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The image has every module of the JDK that the program and its libraries name; checked by the JDK's own jdeps. */
class ModulesTest {
    @Test
    void theListHoldsEveryModuleThatJdepsFinds() throws IOException {
        assertThat(linked()).containsAll(needed());
    }

    /** Those listed and what these require. */
    private static Set<String> linked() throws IOException {
        return Configuration.empty()
                .resolve(ModuleFinder.of(), ModuleFinder.ofSystem(), Modules.listed())
                .modules()
                .stream()
                .map(ResolvedModule::name)
                .collect(Collectors.toSet());
    }

    private static List<String> needed() {
        List<String> jars = jarsAtRunTime();
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        String[] asked = Stream.concat(
                        Stream.of(
                                "--ignore-missing-deps",
                                "--print-module-deps",
                                "-q",
                                "--multi-release",
                                "17",
                                "--class-path",
                                String.join(File.pathSeparator, jars)),
                        jars.stream())
                .toArray(String[]::new);
        ToolProvider.findFirst("jdeps").orElseThrow().run(out, out, asked);
        return List.of(said.toString().strip().split(",", -1));
    }

    /** Our classes and the libraries of the program, of JavaFX also what is special to a system. */
    private static List<String> jarsAtRunTime() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry -> entry.endsWith("target" + File.separator + "classes")
                        || Dependencies.ofTheProgram().stream().anyMatch(entry::endsWith)
                        || Path.of(entry).getFileName().toString().startsWith("javafx-"))
                .toList();
    }
}
