package org.pullproof.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.TestKind;
import org.pullproof.units.Money;
import org.pullproof.worth.WorthFindings.Paid;
import org.pullproof.worth.decision.Decision;
import org.pullproof.worth.question.Known;
import org.pullproof.worth.question.Questioner;

/**
 * Sets apart what is spent, says what one horsepower cost where that is established, and prepares the weighing of what could be next.
 */
public final class WorthAssessor {
    /** The same draws for every session, so that the same session has the same answer. */
    private static final long SEED = 4711;

    private final Questioner questioner;
    private final Answers answers = new Answers(new Decision(SEED));

    public WorthAssessor(Questioner questioner) {
        this.questioner = questioner;
    }

    /**
     * @param book what is spent and what was entered
     * @param partsAndChanges what the recorded changes cost
     * @param everRead tests whose tool is at hand
     * @param setups in the order they were made
     * @param presentBandKw corrected band power of the present setup, kW
     */
    public WorthFindings assess(
            MoneyBook book,
            Car car,
            List<Spending> partsAndChanges,
            HealthFindings health,
            Set<TestKind> everRead,
            ChangeLedger changes,
            List<Setup> setups,
            OptionalDouble presentBandKw,
            EngineProfile profile) {
        String currency = currency(book, car, partsAndChanges);
        Money spent = spent(book, car, partsAndChanges, currency);
        Known known = new Known(
                car, profile, book, currency, spent.value(), health, everRead, changes, setups, presentBandKw);
        return new WorthFindings(
                currency,
                spent,
                paid(changes.changes(), currency),
                new Remarks(book, car, partsAndChanges, currency, questioner.rateTold()).all(),
                tooEarly(known),
                new AskedOnce(questioner, known, answers));
    }

    private static boolean tooEarly(Known known) {
        boolean told = Stream.of(Fact.values())
                .filter(fact -> fact.kind() == Fact.Kind.MONEY)
                .anyMatch(fact -> known.car().told(fact).isPresent());
        boolean booked = !known.book().equals(MoneyBook.empty());
        return !told
                && !booked
                && known.everRead().isEmpty()
                && known.presentBandKw().isEmpty();
    }

    /** The currency of the owner's money; US dollars where no money was told. */
    public static String currency(MoneyBook book, Car car, List<Spending> partsAndChanges) {
        Stream<Money> told = Stream.of(Fact.BUDGET, Fact.PRICE, Fact.VALUE_PER_HP, Fact.WORTH_SOUND, Fact.SPENT)
                .flatMap(fact -> car.money(fact).stream());
        Stream<Money> booked = Stream.of(
                        book.spent().stream().map(Spending::amount),
                        book.options().stream().map(Option::likely),
                        partsAndChanges.stream().map(Spending::amount))
                .flatMap(amounts -> amounts);
        return Stream.concat(told, booked).map(Money::currency).findFirst().orElse("USD");
    }

    private static Money spent(MoneyBook book, Car car, List<Spending> partsAndChanges, String currency) {
        Stream<Money> inSession =
                Stream.concat(book.spent().stream(), partsAndChanges.stream()).map(Spending::amount);
        return Stream.concat(inSession, car.money(Fact.SPENT).stream())
                .filter(amount -> amount.currency().equals(currency))
                .reduce(Money.of(0, currency), (a, b) -> new Money(a.amount().add(b.amount()), currency));
    }

    private static List<Paid> paid(List<JudgedChange> changes, String currency) {
        List<Paid> paid = new ArrayList<>();
        for (JudgedChange judged : changes) {
            Optional<Money> cost = judged.change().flatMap(change -> change.cost());
            cost.filter(money -> money.currency().equals(currency))
                    .ifPresent(money -> paid.add(new Paid(judged.name(), money, PriceOfPower.of(judged, money))));
        }
        return paid;
    }
}
