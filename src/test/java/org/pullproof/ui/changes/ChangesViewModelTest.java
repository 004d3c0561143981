package org.pullproof.ui.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pullproof.changes.Change;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Money;

class ChangesViewModelTest {
    private final SessionViewModel session = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
    private final ChangesViewModel model = ChangesPictures.model(session);

    @Test
    void aRowSaysWhatWasDoneBetweenWhichSetupsAndWhatItCost() {
        assertThat(model.rows())
                .filteredOn(row -> row.what().equals("Main jets two sizes up"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.steps()).isEqualTo("timing 35° → jets two up");
                    assertThat(row.cost()).isEqualTo("$18");
                    assertThat(row.beforeAfter()).contains(" → ").endsWith("hp");
                });
    }

    @Test
    void theFirstSetupAgainstThePresentOneStandsApart() {
        assertThat(model.baselineToNow())
                .hasValueSatisfying(row -> assertThat(row.steps()).isEqualTo("base → jets two up"));
    }

    @Test
    void theSmallestDifferenceIsOnePercentUnlessTheOwnerSaysOtherwise() {
        assertThat(model.smallestPercent()).isEqualTo(1);
    }

    @Test
    void aNewSetupIsMadeAndTheChangeRecordedWithItsCost() {
        model.change("timing 38°", "Total timing to 38°", Map.of(), Optional.of(Money.of(12, "USD")));

        assertThat(session.session().present().name()).isEqualTo("timing 38°");
        assertThat(lastChange().from()).isEqualTo("jets");
        assertThat(lastChange().cost()).hasValue(Money.of(12, "USD"));
    }

    @Test
    void aKnownNameGoesBackToThatSetup() {
        model.change("base", "Back to base", Map.of(), Optional.empty());

        assertThat(session.session().presentSetup()).isEqualTo("base");
        assertThat(session.session().setups()).hasSize(4);
    }

    @Test
    void thePresentSetupIsNoChange() {
        assertThatThrownBy(() -> model.change("jets two up", "", Map.of(), Optional.empty()))
                .hasMessageContaining("already");
    }

    @Test
    void aChangeNeedsTheNameOfTheNewState() {
        assertThatThrownBy(() -> model.change("  ", "timing", Map.of(), Optional.empty()))
                .hasMessageContaining("Name the setup");
    }

    @Test
    void allSetupsButThePresentOneCanBeGoneBackTo() {
        assertThat(model.otherSetups()).containsExactly("base", "timing 32°", "timing 35°");
    }

    @Test
    void withoutChangesThereAreNoRows() {
        assertThat(ChangesPictures.model(SheetFixture.model(UiFixture.open(), DynoFixture::appraise))
                        .rows())
                .isEmpty();
    }

    @Test
    void theTableCopiedHoldsEveryRowAndTheBaseline() {
        assertThat(model.table().lines()).hasSize(model.rows().size() + 2);
    }

    private Change lastChange() {
        return session.session().changes().get(session.session().changes().size() - 1);
    }
}
