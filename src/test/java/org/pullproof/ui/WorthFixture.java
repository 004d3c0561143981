package org.pullproof.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.session.Edit;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.WorthFindings.CostPerHp;
import org.pullproof.worth.WorthFindings.Paid;
import org.pullproof.worth.WorthFindings.Range;
import org.pullproof.worth.WorthFindings.Row;

/** An invented money book with made-up answers. */
public final class WorthFixture {
    private WorthFixture() {}

    public static OpenSession open() {
        return UiFixture.after(
                UiFixture.open(),
                new Edit(
                        "Spend",
                        session -> session.withMoney(new MoneyBook(
                                List.of(new Spending("two dyno hours", usd(320), LocalDate.of(2026, 6, 14))),
                                List.of(option("tune on, cheap list", 90, 180, 420, false, true))))));
    }

    private static Money usd(double amount) {
        return Money.of(amount, "USD");
    }

    public static Option option(String name, double low, double likely, double high, boolean judgement, boolean gains) {
        return new Option(
                name,
                usd(low),
                usd(likely),
                usd(high),
                judgement ? 45 : 2,
                gains ? Optional.of(new Option.Gain(1, 2.4, 3.5)) : Optional.empty(),
                judgement);
    }

    /** The options of the book and three of the program. */
    public static Appraisal appraise(OpenSession open, Figures figures) {
        List<Row> rows = new ArrayList<>();
        open.session().money().options().forEach(option -> rows.add(row(option, false)));
        rows.add(row(option("rings and bearings, own garage", 700, 1460, 3600, true, true), false));
        rows.add(row(option("used engine, tested", 1100, 2150, 4600, true, false), false));
        rows.add(row(option("full rebuild by a shop", 4100, 6900, 11200, true, true), true));
        WorthFindings worth = new WorthFindings(
                new Sentence("**Not much of it:** about $180 on the cheap list."),
                "USD",
                usd(open.session().money().spent().stream()
                        .mapToDouble(spent -> spent.amount().value())
                        .sum()),
                Optional.of(usd(2500)),
                rows,
                List.of(
                        new Paid("base → timing 32°", usd(0), perHp(0, "$0 per hp")),
                        new Paid(
                                "timing 35° → jets two up",
                                usd(18),
                                new CostPerHp(
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        "not established: the interval holds 0"))),
                List.of());
        Appraisal plain = UiFixture.appraise(open, figures);
        return new Appraisal(
                open.session(),
                figures,
                plain.carAnswer(),
                plain.health(),
                plain.tuneUp(),
                plain.dyno(),
                plain.changes(),
                worth,
                plain.day(),
                plain.next(),
                plain.stages());
    }

    private static Row row(Option option, boolean over) {
        boolean gains = option.gain().isPresent();
        return new Row(
                option,
                gains ? Optional.of(new Range(2.1, 5.0, 7.3)) : Optional.empty(),
                gains
                        ? perHp(
                                option.likely().value() / 5,
                                Figures.money(option.likely().value() / 5, "USD") + " per hp ($20 to $800)")
                        : new CostPerHp(
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                "not established: no gain is expected of it"),
                over);
    }

    private static CostPerHp perHp(double likely, String words) {
        return new CostPerHp(
                OptionalDouble.of(likely / 2), OptionalDouble.of(likely), OptionalDouble.of(likely * 2), words);
    }
}
