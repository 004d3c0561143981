package org.pullproof.start;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledForJreRange;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;

/** The program works without a network and never asks for one: neither its own classes, nor the libraries it uses. */
@ExtendWith(HeadlessFx.class)
class NoNetworkTest {
    /** A name or place of something inside the program; all else of {@code java.net} speaks to others. */
    private static final Set<String> PLACES =
            Set.of("java.net.URI", "java.net.URL", "java.net.URISyntaxException", "java.net.MalformedURLException");

    @TempDir
    Path folder;

    private static final DescribedPredicate<JavaClass> A_NETWORK = DescribedPredicate.describe(
            "a network",
            used -> (inPackage(used, "java.net") && !PLACES.contains(used.getName()))
                    || inPackage(used, "javax.net")
                    || inPackage(used, "java.rmi")
                    || inPackage(used, "javafx.scene.web")
                    || (used.getName().startsWith("java.nio.channels.")
                            && used.getName().contains("Socket"))
                    || used.getName().equals("java.awt.Desktop")
                    || used.getName().equals("javafx.application.HostServices"));

    private static boolean inPackage(JavaClass used, String name) {
        return used.getPackageName().equals(name) || used.getPackageName().startsWith(name + ".");
    }

    @Test
    void noClassOfTheProgramDependsOnANetwork() {
        noClasses()
                .should()
                .dependOnClassesThat(A_NETWORK)
                .orShould()
                .callMethod(URL.class, "openConnection")
                .orShould()
                .callMethod(URL.class, "openStream")
                .check(new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("org.pullproof"));
    }

    private record Ended(int status, String said) {}

    /** Runs a program in a Java of its own, behind the guard, on the screen in memory. */
    private Ended guarded(Class<?> program, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin/java").toString()));
        command.add("-Djava.security.manager=" + NetworkGuard.class.getName());
        command.addAll(List.of("-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dprism.order=sw"));
        command.addAll(List.of("-Djava.awt.headless=true", "-Dpullproof.config=" + folder.resolve("config")));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        Collections.addAll(command, arguments);
        ProcessBuilder child = new ProcessBuilder(command).redirectErrorStream(true);
        child.environment().put("DISPLAY", ":in-memory");
        Process started = child.start();
        try (InputStream words = started.getInputStream()) {
            String said = new String(words.readAllBytes(), StandardCharsets.UTF_8);
            return new Ended(started.waitFor(), said);
        }
    }

    static final class Trespasser {
        public static void main(String[] arguments) throws IOException {
            try (Socket socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), 9)) {
                System.out.println("open: " + socket);
            }
        }
    }

    @Test
    @EnabledForJreRange(max = JRE.JAVA_23, disabledReason = "Later Java has no guard that sees every socket")
    void theGuardRefusesASocketAndSaysSo() throws Exception {
        Ended refused = guarded(Trespasser.class);
        assertThat(refused.status()).isNotZero();
        assertThat(refused.said()).contains(NetworkGuard.ASKED).doesNotContain("open:");
    }

    @Test
    @EnabledForJreRange(max = JRE.JAVA_23, disabledReason = "Later Java has no guard that sees every socket")
    void theWindowGoesThroughEverySheetWithoutANetwork() throws Exception {
        Ended walked = guarded(Walk.class, "123456", "demo-sessions/grey-coupe");
        assertThat(walked.said()).doesNotContain(NetworkGuard.ASKED);
        assertThat(walked.status()).isZero();
        assertThat(folder.resolve("config/demo-sessions/grey-coupe/session.json"))
                .exists();
    }

    @Test
    @EnabledForJreRange(max = JRE.JAVA_23, disabledReason = "Later Java has no guard that sees every socket")
    void theCommandsJudgeAndPrintWithoutANetwork() throws Exception {
        Ended run = guarded(
                Errands.class, "", Files.createDirectory(folder.resolve("work")).toString());
        assertThat(run.said()).doesNotContain(NetworkGuard.ASKED);
        assertThat(run.status()).isZero();
        assertThat(folder.resolve("work/report.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("work/shared.zip")).isNotEmptyFile();
    }
}
