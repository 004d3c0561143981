package org.pullproof.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pullproof.units.Money;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** Reads spendings and options as they are typed on the command line. */
final class MoneyArguments {
    private static final Pattern SPENDING = Pattern.compile("(?<what>[^=]+)=(?<money>[^=]+)");
    private static final String NUMBER = "-?\\d+(?:\\.\\d+)?";
    private static final Pattern OPTION =
            Pattern.compile("(?<name>[^=]+)=(?<low>[^/,]+)/(?<likely>[^/,]+)/(?<high>[^/,]+)"
                    + "(?:,(?<hours>\\d+(?:\\.\\d+)?)h)?"
                    + "(?:,(?<least>" + NUMBER + ")/(?<gain>" + NUMBER + ")/(?<most>" + NUMBER + ")%)?");

    private MoneyArguments() {}

    /**
     * Reads {@code jets=18USD}.
     *
     * @throws IllegalArgumentException with a sentence
     */
    static Spending spending(String text, LocalDate date) {
        Matcher shape = SPENDING.matcher(text);
        if (!shape.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not a spending: write jets=18USD.");
        }
        return new Spending(shape.group("what").strip(), Money.parse(shape.group("money")), date);
    }

    /**
     * Reads {@code cold-air duct=60USD/85USD/120USD,2h,0/1/2%}.
     *
     * @throws IllegalArgumentException with a sentence
     */
    static Option option(String text) {
        Matcher shape = OPTION.matcher(text);
        if (!shape.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not an option: write \"cold-air duct=60USD/85USD/120USD,2h,0/1/2%\".");
        }
        return new Option(
                shape.group("name").strip(),
                Money.parse(shape.group("low")),
                Money.parse(shape.group("likely")),
                Money.parse(shape.group("high")),
                shape.group("hours") == null ? 0 : Double.parseDouble(shape.group("hours")),
                gain(shape),
                false);
    }

    private static Optional<Option.Gain> gain(Matcher shape) {
        return Optional.ofNullable(shape.group("least"))
                .map(least -> new Option.Gain(
                        Double.parseDouble(least),
                        Double.parseDouble(shape.group("gain")),
                        Double.parseDouble(shape.group("most"))));
    }
}
