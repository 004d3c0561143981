package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class ChangeSetupTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);
    private static final Quantity TIMING = Quantity.of("32", Unit.DEGREE);

    private final Session begun = Session.begin("car", Tools.profile("i4-distributor"));

    private static ChangeSetup.Wanted wanted(String name, Map<String, Quantity> levels) {
        return new ChangeSetup.Wanted(name, "", levels, Optional.empty(), NOON, Set.of());
    }

    private static Session to(Session session, String name) {
        return ChangeSetup.applied(session, wanted(name, Map.of()));
    }

    @Test
    void aNameNotKnownYetMakesASetupReachedFromThePresentOne() {
        Session next = to(begun, "base");
        assertThat(next.presentSetup()).isEqualTo("base");
        assertThat(next.changes())
                .containsExactly(new Change("as-found", "base", "base", NOON, Optional.empty(), Set.of()));
    }

    @Test
    void aKnownNameGoesBackToThatSetup() {
        Session back = to(to(begun, "base"), "As Found");
        assertThat(back.setups()).hasSize(2);
        assertThat(back.presentSetup()).isEqualTo("as-found");
        assertThat(back.changes()).last().extracting(Change::to).isEqualTo("as-found");
    }

    @Test
    void stayingInThePresentSetupRecordsNoChange() {
        assertThat(to(begun, "as found").changes()).isEmpty();
    }

    @Test
    void whatWasDoneAndItsCostAreKept() {
        Optional<Money> cost = Optional.of(Money.parse("29USD"));
        ChangeSetup.Wanted wanted =
                new ChangeSetup.Wanted("filter", "open filter", Map.of(), cost, NOON, Set.of(RotatingPart.CLUTCH));
        assertThat(ChangeSetup.applied(begun, wanted).changes())
                .containsExactly(
                        new Change("as-found", "filter", "open filter", NOON, cost, Set.of(RotatingPart.CLUTCH)));
    }

    @Test
    void levelsBelongToTheSetup() {
        Session next = ChangeSetup.applied(begun, wanted("timing 32°", Map.of("timing", TIMING)));
        assertThat(next.present().levels()).containsExactly(Map.entry("timing", TIMING));
    }

    @Test
    void aLevelMayBeToldLaterOrAgain() {
        Session named = to(begun, "timing 32°");
        Session told = ChangeSetup.applied(named, wanted("timing 32°", Map.of("timing", TIMING)));
        Session again = ChangeSetup.applied(told, wanted("timing 32°", Map.of("timing", TIMING)));
        assertThat(again).isEqualTo(told);
        assertThat(again.present().levels()).containsKey("timing");
    }

    @Test
    void aLevelThatContradictsTheRecordedOneIsRefused() {
        Session told = ChangeSetup.applied(begun, wanted("timing", Map.of("timing", TIMING)));
        Quantity other = Quantity.of("34", Unit.DEGREE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChangeSetup.applied(told, wanted("timing", Map.of("timing", other))))
                .withMessageContaining("has timing 32 ° recorded, not 34 °");
    }

    @ParameterizedTest
    @CsvSource({"timing 32°,timing-32", "Öl: neu,öl-neu", "°°,setup", "timing 12,timing-12"})
    void theIdIsMadeOfTheNamesLettersAndDigits(String name, String id) {
        assertThat(to(begun, name).presentSetup()).isEqualTo(id);
    }

    @Test
    void twoNamesThatMakeTheSameIdGetTwoIds() {
        Session both = to(to(begun, "timing 32°"), "timing 32!");
        assertThat(both.setups()).extracting("id").containsExactly("as-found", "timing-32", "timing-32_2");
    }
}
