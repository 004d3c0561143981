package org.pullproof.health;

import java.util.Locale;
import org.pullproof.health.Reading.Leak;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** A reading in a few words, for lists. */
public final class ReadingWords {
    private ReadingWords() {}

    /** {@code dry 92 psi}, {@code drop 62 rpm}, {@code leak-down 14 %}. */
    public static String of(Reading reading, Figures figures) {
        if (reading instanceof Reading.Balance balance) {
            return "drop " + figures.of(balance.drop().si(), Shown.SPEED);
        }
        if (reading instanceof Reading.Compression compression) {
            return (compression.wet() ? "wet " : "dry ")
                    + figures.of(compression.gauge().si(), Shown.COMPRESSION);
        }
        if (reading instanceof Reading.Leakdown leakdown) {
            return "leak-down " + leak(leakdown.value(), figures);
        }
        if (reading instanceof Reading.Work work) {
            return "work done: " + work.what();
        }
        return sign((Reading.Sign) reading, figures);
    }

    private static String leak(Leak leak, Figures figures) {
        if (leak instanceof Leak.Zone zone) {
            return zone.zone().key();
        }
        return leak instanceof Leak.Behind behind
                ? figures.of(behind.pressure().si(), Shown.COMPRESSION)
                : quantity(((Leak.Percentage) leak).share(), TestKind.LEAKDOWN, figures);
    }

    private static String sign(Reading.Sign sign, Figures figures) {
        String name = sign.test().words().toLowerCase(Locale.ROOT);
        String value = sign.figure()
                .map(figure -> quantity(figure, sign.test(), figures))
                .or(sign::word)
                .orElse("");
        return name + " " + value;
    }

    /** The figure of a further test in the units of the reader. */
    public static String quantity(Quantity figure, TestKind test, Figures figures) {
        if (figure.dimension() == Dimension.PRESSURE) {
            return figures.of(figure.si(), test == TestKind.VACUUM ? Shown.VACUUM : Shown.OIL_PRESSURE);
        }
        if (figure.dimension() == Dimension.LENGTH) {
            return figures.of(figure.si(), Shown.LASH);
        }
        return figure.figure().toPlainString() + Figures.NO_BREAK_SPACE
                + figure.unit().symbol();
    }
}
