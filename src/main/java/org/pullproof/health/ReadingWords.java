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
            return "drop " + asRead(balance.drop(), Shown.SPEED, figures);
        }
        if (reading instanceof Reading.Compression compression) {
            return (compression.wet() ? "wet " : "dry ") + asRead(compression.gauge(), Shown.COMPRESSION, figures);
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
                ? asRead(behind.pressure(), Shown.COMPRESSION, figures)
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

    /** A figure with all its digits where it was typed in the unit it is shown in, else rounded. */
    public static String asRead(Quantity figure, Shown use, Figures figures) {
        return figure.unit() == figures.unit(use)
                ? figure.figure().toPlainString()
                        + Figures.NO_BREAK_SPACE
                        + figure.unit().symbol()
                : figures.of(figure.si(), use);
    }

    /** The figure of a further test in the units of the reader. */
    public static String quantity(Quantity figure, TestKind test, Figures figures) {
        if (figure.dimension() == Dimension.PRESSURE) {
            return asRead(figure, test == TestKind.VACUUM ? Shown.VACUUM : Shown.OIL_PRESSURE, figures);
        }
        if (figure.dimension() == Dimension.LENGTH) {
            return asRead(figure, Shown.LASH, figures);
        }
        return figure.figure().toPlainString()
                + Figures.NO_BREAK_SPACE
                + figure.unit().symbol();
    }
}
