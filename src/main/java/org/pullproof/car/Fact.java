package org.pullproof.car;

import java.util.Arrays;
import java.util.Optional;

/** A fact or a wish of the owner that no reading tells; the key is its name on the command line and on disk. */
public enum Fact {
    ACCESS("access", Kind.ACCESS, "What the owner permits now"),
    RUNS("runs", Kind.RUNS, "Does it run"),
    ELEVATION("elevation", Kind.LENGTH, "Garage lies at"),
    PRICE("price", Kind.MONEY, "Price asked"),
    LEAST_PRICE("least-price", Kind.MONEY, "Least the seller takes"),
    ODOMETER("odometer", Kind.LENGTH, "Odometer"),
    FUEL("fuel", Kind.WORDS, "Fuel"),
    GEAR("gear", Kind.WORDS, "Gear on the dyno"),
    IDENTITY("identity", Kind.WORDS, "Identity"),
    SELLER_SAYS("seller-says", Kind.WORDS, "Seller says"),
    BAND("band", Kind.BAND, "Working band"),
    SMALLEST_DIFFERENCE("smallest-difference", Kind.PERCENT, "Smallest difference worth paying for"),
    COMPRESSION_RULE("compression-rule", Kind.RULE, "Rule of compression that counts"),
    WORTH_SOUND("worth-sound", Kind.MONEY, "Worth if the engine were sound"),
    VALUE_PER_HP("value-per-hp", Kind.MONEY, "One hp is worth"),
    HOUR_PRICE("hour-price", Kind.MONEY, "Own hours count as"),
    MONTHS("months", Kind.NUMBER, "Months kept"),
    BUDGET("budget", Kind.MONEY, "Budget"),
    WEEK_WITHOUT("week-without", Kind.MONEY, "A week without the car"),
    HARD_PULLS("hard-pulls", Kind.YES_NO, "Hard pulls"),
    SPENT("spent", Kind.MONEY, "Spent before this session");

    /** How a value is typed. */
    public enum Kind {
        ACCESS,
        RUNS,
        LENGTH,
        MONEY,
        WORDS,
        BAND,
        PERCENT,
        NUMBER,
        RULE,
        YES_NO
    }

    private final String key;
    private final Kind kind;
    private final String words;

    Fact(String key, Kind kind, String words) {
        this.key = key;
        this.kind = kind;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public Kind kind() {
        return kind;
    }

    public String words() {
        return words;
    }

    public static Optional<Fact> named(String key) {
        return Arrays.stream(values()).filter(fact -> fact.key.equals(key)).findFirst();
    }
}
