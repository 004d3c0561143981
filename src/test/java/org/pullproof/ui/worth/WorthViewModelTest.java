package org.pullproof.ui.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.advice.Stage;
import org.pullproof.car.Fact;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.WorthFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.worth.OptionDraft.Field;
import org.pullproof.units.Money;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.trade.JudgedNumber;

class WorthViewModelTest {
    private final SessionViewModel session = SheetFixture.model(WorthFixture.open(), WorthFixture::appraise);
    private final WorthViewModel model = WorthPictures.model(session);

    private MoneyBook book() {
        return session.session().money();
    }

    private Option entered() {
        return book().options().get(0);
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
    void anOptionWhoseNameIsChangedTakesThePlaceOfTheOldOne() {
        Option cheap = entered();
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
        model.remove(entered());
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
    void nothingIsWeighedUntilSomebodyLooks() {
        assertThat(model.weighed()).isEmpty();

        session.stageProperty().set(Stage.WORTH_IT);

        assertThat(model.weighed()).isPresent();
        assertThat(model.weighingProperty().get()).isFalse();
    }

    @Test
    void aNumberOfTheOwnerCountsAndUndoPutsTheUsualOneBack() {
        JudgedNumber resale = number("car.resale-share");

        model.judge(resale, 0.2, refused -> {});
        assertThat(number("car.resale-share").value()).isEqualTo(0.2);
        assertThat(number("car.resale-share").own()).isTrue();

        session.undo();
        assertThat(number("car.resale-share")).isEqualTo(resale);
    }

    @Test
    void allUsualNumbersComeBackAtOnce() {
        model.judge(number("car.resale-share"), 0.2, refused -> {});
        model.judge(number("work.lash.p50"), 30, refused -> {});

        model.resetAll();

        assertThat(model.judgements()).noneMatch(JudgedNumber::own);
    }

    private JudgedNumber number(String key) {
        return model.judgements().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotToldIsShownWithWhatCountsForIt() {
        assertThat(model.untilTold(Fact.VALUE_PER_HP)).isEqualTo("taken as $20");
        assertThat(model.withCurrency(Fact.BUDGET, "900")).isEqualTo("900USD");
    }

    @Test
    void theTableCopiedHasARowForEachOption() {
        session.stageProperty().set(Stage.WORTH_IT);
        int rows = model.weighed().orElseThrow().answer().options().size();

        assertThat(model.table().lines()).hasSize(rows + 1);
        assertThat(model.table()).contains("cold-air duct");
    }
}
