package org.pullproof.ui.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.car.Fact;
import org.pullproof.session.Edit;
import org.pullproof.session.Judgement;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.Act;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.trade.JudgedNumber;

/** The sheet Worth it for tests; money is booked in the document and not on the disk. */
public final class WorthPictures {
    private WorthPictures() {}

    public static Sheet sheet(SessionViewModel session) {
        return new WorthSheet(model(session));
    }

    static WorthViewModel model(SessionViewModel session) {
        return new WorthViewModel(session, new Booked(), new ImmediateRunner(), SheetFixture.CLOCK);
    }

    private static final class Booked implements MoneyActs {
        private static Act book(UnaryOperator<MoneyBook> step) {
            return open -> UiFixture.after(
                    open, new Edit("Change the money book", now -> now.withMoney(step.apply(now.money()))));
        }

        private static Act spent(Consumer<List<Spending>> step) {
            return book(before -> {
                List<Spending> spent = new ArrayList<>(before.spent());
                step.accept(spent);
                return before.withSpent(spent);
            });
        }

        @Override
        public Act spend(Spending spending) {
            return spent(list -> list.add(spending));
        }

        @Override
        public Act correct(int place, Spending spending) {
            return spent(list -> list.set(place, spending));
        }

        @Override
        public Act removeSpending(int place) {
            return spent(list -> list.remove(place));
        }

        @Override
        public Act offer(Option option, String before) {
            return book(book -> {
                List<Option> options = new ArrayList<>(book.options());
                options.removeIf(known -> known.name().equals(before));
                options.add(option);
                return book.withOptions(options);
            });
        }

        @Override
        public Act removeOption(String name) {
            return book(book -> book.withOptions(book.options().stream()
                    .filter(known -> !known.name().equals(name))
                    .toList()));
        }

        @Override
        public Act tell(Fact fact, String text) {
            return open -> UiFixture.after(
                    open, new Edit("Tell", now -> now.withCar(now.car().with(fact, text))));
        }

        @Override
        public Act judge(JudgedNumber number, double value) {
            return judged(number, Optional.of(value));
        }

        @Override
        public Act reset(JudgedNumber number) {
            return judged(number, Optional.empty());
        }

        private static Act judged(JudgedNumber number, Optional<Double> value) {
            return open -> UiFixture.after(
                    open,
                    new Edit(
                            "Judge",
                            now -> now.withJudgement(now.judgement().with(Map.of("money." + number.key(), value)))));
        }

        @Override
        public Act resetAll() {
            return open -> UiFixture.after(open, new Edit("Judge as usual", now -> now.withJudgement(Judgement.own())));
        }
    }
}
