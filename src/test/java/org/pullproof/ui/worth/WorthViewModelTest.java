package org.pullproof.ui.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.WorthFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.worth.OptionDraft.Field;
import org.pullproof.units.Money;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

class WorthViewModelTest {
    private final SessionViewModel session = SheetFixture.model(WorthFixture.open(), WorthFixture::appraise);
    private final WorthViewModel model = WorthPictures.model(session);

    private MoneyBook book() {
        return session.session().money();
    }

    private Option program(String name) {
        return model.findings().options().stream()
                .map(row -> row.option())
                .filter(option -> option.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static OptionDraft typed(OptionDraft draft, Field field, String text) {
        draft.put(field, draft.read(field, text));
        return draft;
    }

    @Test
    void bareMoneyTakesTheCurrencyOfTheSheet() {
        assertThat(model.newDraft().read(Field.LIKELY, "1400")).isEqualTo("1400 USD");
        assertThat(model.money("160")).isEqualTo(Money.parse("160USD"));
    }

    @ParameterizedTest
    @CsvSource({"LIKELY, plenty", "HOURS, many", "GAIN_LIKELY, a lot"})
    void whatIsNoFigureIsRefusedWithASentence(Field field, String text) {
        assertThatThrownBy(() -> model.newDraft().read(field, text)).hasMessageContaining(text);
    }

    @Test
    void anEditedOptionOfTheProgramIsTheOwnersAndNoLongerJudgement() {
        Option rings = program("rings and bearings, own garage");
        OptionDraft draft = typed(model.draft(rings), Field.LIKELY, "1200");

        model.keep(draft, rings.name());

        assertThat(book().options())
                .filteredOn(option -> option.name().equals(rings.name()))
                .singleElement()
                .satisfies(option -> {
                    assertThat(option.likely().value()).isEqualTo(1200);
                    assertThat(option.judgement()).isFalse();
                    assertThat(option.gain()).contains(new Option.Gain(1, 2.4, 3.5));
                });
    }

    @Test
    void anOptionWhoseNameIsChangedTakesThePlaceOfTheOldOne() {
        Option cheap = program("tune on, cheap list");
        OptionDraft draft = typed(model.draft(cheap), Field.NAME, "cheap list");

        model.keep(draft, cheap.name());

        assertThat(book().options()).extracting(Option::name).containsExactly("cheap list");
    }

    @Test
    void onlyTheLikelyCostIsNeeded() {
        OptionDraft draft = typed(typed(model.newDraft(), Field.NAME, "ignition module"), Field.LIKELY, "80");

        model.keep(draft, "");

        assertThat(book().options()).last().satisfies(option -> {
            assertThat(option.low()).isEqualTo(option.high());
            assertThat(option.gain()).isEmpty();
        });
    }

    @Test
    void costsThatDoNotGoFromLowToHighAreRefusedAndNothingIsKept() {
        OptionDraft draft =
                typed(typed(typed(model.newDraft(), Field.NAME, "head"), Field.LIKELY, "80"), Field.LOW, "100");

        assertThatThrownBy(() -> model.keep(draft, "")).hasMessageContaining("from low to high");
        assertThat(book().options()).hasSize(1);
    }

    @Test
    void aRemovedOptionComesBackWithUndo() {
        model.remove(program("tune on, cheap list"));
        assertThat(book().options()).isEmpty();

        session.undo();

        assertThat(book().options()).hasSize(1);
    }

    @Test
    void aSpendingIsKeptWithTheDayOfToday() {
        model.spend("spark plugs", Optional.of(Money.of(36, "USD")), Optional.empty());

        assertThat(book().spent())
                .last()
                .satisfies(spent -> assertThat(spent.date()).isEqualTo("2026-06-14"));
    }

    @Test
    void anEditedSpendingStaysInItsPlaceWithItsDate() {
        Spending hours = book().spent().get(0);

        model.spend("three dyno hours", Optional.of(Money.of(480, "USD")), Optional.of(hours));

        assertThat(book().spent())
                .containsExactly(new Spending("three dyno hours", Money.of(480, "USD"), hours.date()));
    }

    @Test
    void aSpendingWithoutAmountIsRefused() {
        assertThatThrownBy(() -> model.spend("plugs", Optional.empty(), Optional.empty()))
                .hasMessageContaining("Say how much");
    }

    @Test
    void whatIsSpentStandsApartFromWhatIsLeft() {
        assertThat(model.moneyWords()).isEqualTo("$320 is spent and does not count. $2,500 of the budget is left.");
    }

    @Test
    void theTableCopiedSaysWhichFiguresAreJudgement() {
        assertThat(model.table().lines())
                .filteredOn(line -> line.endsWith("judgement"))
                .hasSize(3);
    }
}
