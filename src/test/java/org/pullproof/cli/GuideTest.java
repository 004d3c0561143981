package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GuideTest {
    private static final Pattern LISTED = Pattern.compile("(?m)^  ([a-z-]+)  +[A-Z]");

    static List<String> commands() {
        String help = new CommandHarness().run("--help").out();
        return LISTED.matcher(help).results().map(line -> line.group(1)).toList();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void theGuideShowsEveryCommand(String command) throws IOException {
        assertThat(Files.readString(Path.of("docs/user-guide.md"))).contains("pullproof " + command);
    }
}
