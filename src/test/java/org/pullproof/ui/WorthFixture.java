package org.pullproof.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.car.Fact;
import org.pullproof.session.Edit;
import org.pullproof.testing.Moneys;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** An invented money book, weighed for real. */
public final class WorthFixture {
    private static final double PRESENT_KW = 154;

    private WorthFixture() {}

    public static OpenSession open() {
        return UiFixture.after(
                UiFixture.open(),
                new Edit(
                        "Spend",
                        session -> session.withMoney(new MoneyBook(
                                        List.of(new Spending("two dyno hours", usd(320), LocalDate.of(2026, 6, 14))),
                                        List.of(option("cold-air duct", 90, 180, 420, true))))
                                .withCar(session.car()
                                        .with(Fact.ACCESS, "own-it")
                                        .with(Fact.RUNS, "yes")
                                        .with(Fact.WORTH_SOUND, "7800USD")
                                        .with(Fact.BUDGET, "2500USD"))));
    }

    private static Money usd(double amount) {
        return Money.of(amount, "USD");
    }

    public static Option option(String name, double low, double likely, double high, boolean gains) {
        return new Option(
                name,
                usd(low),
                usd(likely),
                usd(high),
                2,
                gains ? Optional.of(new Option.Gain(1, 2.4, 3.5)) : Optional.empty(),
                false);
    }

    public static Appraisal appraise(OpenSession open, Figures figures) {
        Appraisal plain = UiFixture.appraise(open, figures);
        return new Appraisal(
                open.session(),
                figures,
                plain.carAnswer(),
                plain.health(),
                plain.tuneUp(),
                plain.dyno(),
                plain.changes(),
                Moneys.of(open.session(), plain.changes(), OptionalDouble.of(PRESENT_KW)),
                plain.day(),
                plain.next(),
                plain.stages());
    }
}
