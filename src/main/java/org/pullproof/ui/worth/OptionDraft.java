package org.pullproof.ui.worth;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.worth.Option;

/** An option as it is being typed. */
public final class OptionDraft {
    private final Map<Field, String> texts = new EnumMap<>(Field.class);
    private final String currency;

    /** What is typed of an option. */
    public enum Field {
        NAME("Option"),
        LOW("Low, 1 in 10 costs less"),
        LIKELY("Likely"),
        HIGH("High, 1 in 10 costs more"),
        HOURS("Own hours"),
        GAIN_LOW("Gain low, %"),
        GAIN_LIKELY("likely, %"),
        GAIN_HIGH("high, %");

        private final String words;

        Field(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        boolean isMoney() {
            return this == LOW || this == LIKELY || this == HIGH;
        }
    }

    OptionDraft(String currency) {
        this.currency = currency;
    }

    static OptionDraft of(Option option) {
        OptionDraft draft = new OptionDraft(option.likely().currency());
        draft.texts.put(Field.NAME, option.name());
        draft.texts.put(Field.LOW, option.low().toString());
        draft.texts.put(Field.LIKELY, option.likely().toString());
        draft.texts.put(Field.HIGH, option.high().toString());
        draft.texts.put(Field.HOURS, plain(option.hours()));
        option.gain().ifPresent(gain -> {
            draft.texts.put(Field.GAIN_LOW, plain(gain.lowPercent()));
            draft.texts.put(Field.GAIN_LIKELY, plain(gain.likelyPercent()));
            draft.texts.put(Field.GAIN_HIGH, plain(gain.highPercent()));
        });
        return draft;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    public String text(Field field) {
        return texts.getOrDefault(field, "");
    }

    /**
     * Reads one text as it will stand; bare money takes the currency of the sheet.
     *
     * @throws IllegalArgumentException with a sentence if it cannot be read
     */
    public String read(Field field, String typed) {
        String text = typed.strip();
        if (field == Field.NAME) {
            return text;
        }
        if (field.isMoney()) {
            return Money.parse(text.matches("[\\d.,]+") ? text + currency : text)
                    .toString();
        }
        return plain(number(field, text));
    }

    private static double number(Field field, String text) {
        String figure = text.replace(',', '.')
                .replace(Figures.MINUS, '-')
                .replace("%", "")
                .strip();
        if (!figure.matches("[+-]?\\d{1,4}(\\.\\d{1,3})?")) {
            throw new IllegalArgumentException(field.words() + " is a number, was \"" + text + "\".");
        }
        return Double.parseDouble(figure);
    }

    public void put(Field field, String text) {
        if (text.isBlank()) {
            texts.remove(field);
        } else {
            texts.put(field, text);
        }
    }

    /**
     * The option typed; the figures are now the owner's, no longer judgement of the program.
     *
     * @throws IllegalArgumentException with a sentence if something is missing or does not go together
     */
    Option option() {
        if (text(Field.NAME).isEmpty()) {
            throw new IllegalArgumentException("Name the option: \"rings and bearings, own garage\".");
        }
        Money likely = money(Field.LIKELY)
                .orElseThrow(() -> new IllegalArgumentException(
                        "Say what " + text(Field.NAME) + " is likely to cost: 1400" + currency + "."));
        return new Option(
                text(Field.NAME),
                money(Field.LOW).orElse(likely),
                likely,
                money(Field.HIGH).orElse(likely),
                text(Field.HOURS).isEmpty() ? 0 : number(Field.HOURS, text(Field.HOURS)),
                gain(),
                false);
    }

    private Optional<Money> money(Field field) {
        return text(field).isEmpty() ? Optional.empty() : Optional.of(Money.parse(text(field)));
    }

    private Optional<Option.Gain> gain() {
        if (text(Field.GAIN_LIKELY).isEmpty()) {
            if (!text(Field.GAIN_LOW).isEmpty() || !text(Field.GAIN_HIGH).isEmpty()) {
                throw new IllegalArgumentException("Say the likely gain too, between low and high.");
            }
            return Optional.empty();
        }
        double likely = number(Field.GAIN_LIKELY, text(Field.GAIN_LIKELY));
        return Optional.of(new Option.Gain(end(Field.GAIN_LOW, likely), likely, end(Field.GAIN_HIGH, likely)));
    }

    private double end(Field field, double likely) {
        return text(field).isEmpty() ? likely : number(field, text(field));
    }
}
