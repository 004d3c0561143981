package org.pullproof.worth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.worth.WorthFindings.CostPerHp;
import org.pullproof.worth.WorthFindings.Paid;
import org.pullproof.worth.WorthFindings.Range;
import org.pullproof.worth.WorthFindings.Row;

/**
 * Sets apart what is spent, lists what could be spent next, and says what one horsepower cost where that is established.
 * Chances are not weighed and options are not ranked by what they leave. Immutable.
 */
public final class WorthAssessor {
    private final List<DefaultOption> defaults;

    /**
     * @param defaults the program's own options
     */
    public WorthAssessor(List<DefaultOption> defaults) {
        this.defaults = List.copyOf(defaults);
    }

    /**
     * @param book what is spent and what was entered; an entered option takes the place of a default of the same name
     * @param partsAndChanges what the recorded changes cost
     * @param presentBandKw corrected band power of the present setup, kW
     */
    public WorthFindings assess(
            MoneyBook book,
            Car car,
            List<Spending> partsAndChanges,
            HealthFindings health,
            ChangeLedger changes,
            OptionalDouble presentBandKw,
            EngineProfile profile,
            Figures figures) {
        String currency = currency(book, car, partsAndChanges);
        List<Spending> inSession =
                Stream.concat(book.spent().stream(), partsAndChanges.stream()).toList();
        Money sinceBudget = sum(inSession.stream().map(Spending::amount).toList(), currency);
        Money spent = plus(sinceBudget, in(currency, car.money(Fact.SPENT)));
        Optional<Money> left = in(currency, car.money(Fact.BUDGET)).map(budget -> minus(budget, sinceBudget));
        List<Paid> done = paid(changes.changes(), currency);
        List<Row> rows = options(book, health, profile, currency).stream()
                .map(option -> row(option, presentBandKw, left))
                .toList();
        MoneyAnswer answer = new MoneyAnswer(done, spent, left, presentBandKw.isPresent(), car.beforePurchase());
        return new WorthFindings(
                answer.sentence(),
                currency,
                spent,
                left,
                rows,
                done,
                new Remarks(book, car, partsAndChanges, currency).all());
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

    /** Options entered, then the defaults that make sense for this engine and are neither replaced nor paid already. */
    private List<Option> options(MoneyBook book, HealthFindings health, EngineProfile profile, String currency) {
        boolean fault = health.cylinders().stream()
                .anyMatch(cylinder -> cylinder.state() == State.LOW || cylinder.state() == State.IN_DOUBT);
        List<String> taken = Stream.concat(
                        book.options().stream().map(Option::name),
                        book.spent().stream().map(Spending::what))
                .toList();
        List<Option> options = new ArrayList<>(book.options());
        defaults.stream()
                .filter(option -> option.fits(profile, fault))
                .filter(option -> taken.stream().noneMatch(option.name()::equalsIgnoreCase))
                .map(option -> option.on(profile))
                .forEach(options::add);
        options.removeIf(option -> !option.likely().currency().equals(currency));
        options.sort(Comparator.comparingDouble(option -> option.likely().value()));
        return options;
    }

    private static Row row(Option option, OptionalDouble presentKw, Optional<Money> left) {
        Optional<Range> gain = presentKw.isPresent()
                ? option.gain().map(percent -> gainHp(percent, presentKw.getAsDouble()))
                : Optional.empty();
        boolean over =
                left.filter(money -> option.low().value() > money.value()).isPresent();
        return new Row(option, gain, costPerHp(option, gain, presentKw.isPresent()), over);
    }

    private static Range gainHp(Option.Gain percent, double presentKw) {
        double hp = PriceOfPower.hp(presentKw) / 100;
        return new Range(percent.lowPercent() * hp, percent.likelyPercent() * hp, percent.highPercent() * hp);
    }

    private static CostPerHp costPerHp(Option option, Optional<Range> gain, boolean powerKnown) {
        if (option.gain().isEmpty()) {
            return PriceOfPower.notEstablished("no gain is expected of it");
        }
        Range money = new Range(
                option.low().value(), option.likely().value(), option.high().value());
        return gain.map(hp -> PriceOfPower.of(money, hp, option.likely().currency()))
                .orElseGet(() -> PriceOfPower.notEstablished(powerKnown ? "no gain is known" : "power unknown"));
    }

    private static List<Paid> paid(List<JudgedChange> changes, String currency) {
        List<Paid> paid = new ArrayList<>();
        for (JudgedChange judged : changes) {
            in(currency, judged.change().flatMap(change -> change.cost()))
                    .ifPresent(cost -> paid.add(new Paid(judged.name(), cost, PriceOfPower.of(judged, cost))));
        }
        return paid;
    }

    private static Money sum(List<Money> amounts, String currency) {
        return amounts.stream()
                .filter(amount -> amount.currency().equals(currency))
                .reduce(Money.of(0, currency), (a, b) -> plus(a, Optional.of(b)));
    }

    private static Optional<Money> in(String currency, Optional<Money> amount) {
        return amount.filter(money -> money.currency().equals(currency));
    }

    private static Money plus(Money a, Optional<Money> b) {
        return b.map(more -> new Money(a.amount().add(more.amount()), a.currency()))
                .orElse(a);
    }

    private static Money minus(Money a, Money b) {
        return new Money(a.amount().subtract(b.amount()), a.currency());
    }
}
