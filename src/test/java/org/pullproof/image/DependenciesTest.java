package org.pullproof.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the program is made of is known, allowed and pinned. */
class DependenciesTest {
    /**
     * May be joined to a work under Apache-2.0 and passed on with it. Source: the list of licences of category A and, for what is
     * used as an unchanged file of its own, B of the Apache Software Foundation's third-party licence policy; LGPL-2.1-or-later
     * (section 6: a work that uses the library) and GPL-2.0 with the class path exception by their own text.
     */
    private static final Set<String> MAY_BE_PART =
            Set.of("Apache-2.0", "BSD-3-Clause", "MIT", "GPL-2.0-with-classpath-exception", "LGPL-2.1-or-later");

    /** Beside those, what only tests use and nobody is given. */
    private static final Set<String> MAY_SERVE_TESTS = Set.of("EPL-2.0", "EUPL-1.1");

    @Test
    void thePageListsExactlyTheLibrariesThatAreThere() {
        assertThat(Dependencies.listed().stream().map(Dependencies.Library::jar))
                .containsExactlyInAnyOrderElementsOf(Dependencies.there());
    }

    @Test
    void everyLibraryOfTheProgramIsUnderALicenceThatMayBePassedOnWithIt() {
        assertThat(Dependencies.listed())
                .filteredOn(Dependencies.Library::part)
                .extracting(Dependencies.Library::licence)
                .isSubsetOf(MAY_BE_PART);
    }

    @Test
    void everyLibraryOfTheTestsHasALicenceThatIsKnown() {
        assertThat(Dependencies.listed())
                .filteredOn(library -> !library.part() && !MAY_BE_PART.contains(library.licence()))
                .extracting(Dependencies.Library::licence)
                .isSubsetOf(MAY_SERVE_TESTS);
    }

    /** A plugin without a version is whatever the Maven of the day brings. */
    @Test
    void everyPluginIsPinnedWhereItIsFirstNamed() throws IOException {
        List<String> plugins = Pattern.compile("<plugin>(.*?)</plugin>", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("pom.xml")))
                .results()
                .map(MatchResult::group)
                .toList();
        Pattern name = Pattern.compile("<artifactId>([^<]+)</artifactId>");
        List<String> pinned = plugins.stream()
                .filter(plugin -> plugin.replaceAll("(?s)<(dependencies|executions|configuration)>.*?</\\1>", "")
                        .contains("<version>"))
                .map(plugin -> first(name, plugin))
                .toList();
        assertThat(plugins).isNotEmpty().allSatisfy(plugin -> assertThat(pinned).contains(first(name, plugin)));
    }

    /** The plugins that Maven adds by itself to a build up to install, deploy and site; source: the default bindings of Maven 3. */
    @Test
    void thePluginsThatMavenAddsByItselfArePinnedToo() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml")))
                .contains(List.of(
                        "maven-clean-plugin",
                        "maven-resources-plugin",
                        "maven-compiler-plugin",
                        "maven-surefire-plugin",
                        "maven-jar-plugin",
                        "maven-install-plugin",
                        "maven-deploy-plugin",
                        "maven-site-plugin"));
    }

    private static String first(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(found -> found.group(1))
                .findFirst()
                .orElseThrow();
    }
}
