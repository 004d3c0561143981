package org.pullproof;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who may call whom. A room is a package right below {@code org.pullproof}; its sub-packages belong to it. Templates
 * are compiled by a tool and left out.
 */
@AnalyzeClasses(
        packages = "org.pullproof",
        importOptions = {ImportOption.DoNotIncludeTests.class, RoomsTest.WithoutTemplates.class})
class RoomsTest {
    private static final String HOUSE = "org.pullproof";

    /** The hall before all rooms: {@code Main} and nothing else. */
    private static final String HALL = "";

    private static final Set<String> SUBJECTS =
            Set.of("engine", "car", "weather", "dyno", "health", "tuneup", "changes", "worth");

    private static final Set<String> BEHIND_APP =
            union(SUBJECTS, "units", "session", "advice", "drawing", "files", "report");

    /** Each room with the rooms it may read besides itself. */
    private static final Map<String, Set<String>> MAY_READ = Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("engine", Set.of("units")),
            Map.entry("car", Set.of("units")),
            Map.entry("weather", Set.of("units")),
            Map.entry("dyno", Set.of("units", "engine", "weather")),
            Map.entry("health", Set.of("units", "engine", "car", "weather")),
            Map.entry("tuneup", Set.of("units", "engine", "car", "weather")),
            Map.entry("changes", Set.of("units", "dyno", "engine")),
            Map.entry("worth", Set.of("units", "health", "changes", "car", "engine")),
            Map.entry("session", union(SUBJECTS, "units")),
            Map.entry("advice", union(SUBJECTS, "units", "session")),
            Map.entry("drawing", union(SUBJECTS, "units")),
            Map.entry("files", union(SUBJECTS, "units", "session")),
            Map.entry("report", union(SUBJECTS, "units", "session", "advice", "drawing")),
            Map.entry("app", BEHIND_APP),
            Map.entry("cli", union(BEHIND_APP, "app")),
            Map.entry("ui", union(BEHIND_APP, "app")),
            Map.entry(HALL, union(BEHIND_APP, "app", "cli", "ui")));

    @ArchTest
    static final ArchRule every_room_reads_only_the_rooms_it_may = classes()
            .should(readOnlyTheRoomsTheyMay())
            .because("the subjects of the job know nothing of what delivers them")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule only_main_stands_in_the_hall = classes()
            .that()
            .resideInAPackage(HOUSE)
            .and()
            .areTopLevelClasses()
            .should()
            .haveSimpleName("Main")
            .orShould()
            .haveSimpleName("package-info")
            .because("everything else belongs to a room")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule rooms_have_no_cycle =
            slices().matching(HOUSE + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule the_window_is_only_in_ui =
            only("the command line runs without a display", Set.of("ui"), "javafx..", "org.controlsfx..");

    @ArchTest
    static final ArchRule templates_and_pdf_are_only_in_report = only(
            "one room knows how a report is set",
            Set.of("report"),
            "gg.jte..",
            "com.openhtmltopdf..",
            "org.apache.pdfbox..",
            "org.apache.batik..");

    @ArchTest
    static final ArchRule json_is_only_in_files_and_cli =
            only("the form of a file is no matter of the subjects", Set.of("files", "cli"), "com.fasterxml..");

    @ArchTest
    static final ArchRule csv_is_only_in_files =
            only("dyno gets a table, however it was written", Set.of("files"), "de.siegmar..");

    @ArchTest
    static final ArchRule the_command_line_is_only_in_cli =
            only("arguments end where a command begins; Main starts it", Set.of("cli", HALL), "picocli..");

    @ArchTest
    static final ArchRule mathematics_is_only_in_the_subjects =
            only("what delivers an answer computes nothing", SUBJECTS, "org.apache.commons.math3..");

    @ArchTest
    static final ArchRule there_is_no_static_state = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("objects are built in Main and handed on")
            .allowEmptyShould(true);

    private static ArchRule only(String why, Set<String> rooms, String... packages) {
        String[] homes = rooms.stream()
                .map(room -> room.equals(HALL) ? HOUSE : HOUSE + "." + room + "..")
                .toArray(String[]::new);
        return noClasses()
                .that(resideInAPackage(HOUSE + "..").and(not(resideInAnyPackage(homes))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .because(why)
                .allowEmptyShould(true);
    }

    private static ArchCondition<JavaClass> readOnlyTheRoomsTheyMay() {
        return new ArchCondition<>("read only the rooms they may") {
            @Override
            public void check(JavaClass reader, ConditionEvents events) {
                String room = roomOf(reader);
                if (!MAY_READ.containsKey(room)) {
                    events.add(SimpleConditionEvent.violated(
                            reader, "\"" + room + "\" is no room of the house: " + reader.getName()));
                    return;
                }
                Set<String> allowed = union(MAY_READ.getOrDefault(room, Set.of()), room);
                reader.getDirectDependenciesFromSelf().stream()
                        .filter(read -> inTheHouse(read.getTargetClass()))
                        .filter(read -> !allowed.contains(roomOf(read.getTargetClass())))
                        .forEach(read -> events.add(SimpleConditionEvent.violated(
                                reader,
                                room + " may not read " + roomOf(read.getTargetClass()) + ": "
                                        + read.getDescription())));
            }
        };
    }

    private static boolean inTheHouse(JavaClass type) {
        return (type.getPackageName() + ".").startsWith(HOUSE + ".");
    }

    /** Returns the first package name below the house, or {@link #HALL}. */
    private static String roomOf(JavaClass type) {
        String below = type.getPackageName().substring(HOUSE.length());
        return below.isEmpty() ? HALL : below.substring(1).split("\\.", 2)[0];
    }

    private static Set<String> union(Set<String> rooms, String... more) {
        return Stream.concat(rooms.stream(), Arrays.stream(more)).collect(Collectors.toUnmodifiableSet());
    }

    /** Leaves out what was compiled from a template. */
    static final class WithoutTemplates implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/org/pullproof/report/template/");
        }
    }
}
