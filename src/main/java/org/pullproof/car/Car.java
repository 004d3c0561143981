package org.pullproof.car;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;
import org.pullproof.units.Unit;

/**
 * The car around the engine. What is not known is absent, never a default.
 *
 * @param name what its owner calls it
 * @param facts what was told, each text as typed and checked by {@link #with}
 */
public record Car(String name, Map<Fact, String> facts) {
    private static final double SMALLEST_UNLESS_TOLD = 1;

    public Car {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A car has a name");
        }
        EnumMap<Fact, String> checked = new EnumMap<>(Fact.class);
        facts.forEach((fact, text) -> checked.put(fact, checked(fact, text)));
        facts = Collections.unmodifiableMap(checked);
    }

    public static Car named(String name) {
        return new Car(name, Map.of());
    }

    /**
     * Returns this car with one fact told; an empty text forgets it.
     *
     * @throws IllegalArgumentException with a sentence if the text is not of the fact's kind
     */
    public Car with(Fact fact, String text) {
        EnumMap<Fact, String> next = new EnumMap<>(Fact.class);
        next.putAll(facts);
        if (text.isBlank()) {
            next.remove(fact);
        } else {
            next.put(fact, text.strip());
        }
        return new Car(name, next);
    }

    private static String checked(Fact fact, String text) {
        try {
            switch (fact.kind()) {
                case ACCESS -> Access.of(text);
                case RUNS -> Runs.of(text);
                case LENGTH -> Quantity.parse(text, Dimension.LENGTH);
                case MONEY -> Money.parse(text);
                case BAND -> RpmRange.parse(text);
                case PERCENT -> Quantity.parse(text, Dimension.SHARE);
                case NUMBER -> requireCount(text);
                case RULE -> CompressionRule.of(text);
                case YES_NO -> requireYesOrNo(text);
                case WORDS -> {}
            }
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException(fact.key() + ": " + wrong.getMessage(), wrong);
        }
        return text;
    }

    private static void requireCount(String text) {
        if (!text.matches("\\d{1,3}")) {
            throw new IllegalArgumentException("a whole number from 0 to 999, was \"" + text + "\"");
        }
    }

    private static void requireYesOrNo(String text) {
        if (!text.matches("yes|no")) {
            throw new IllegalArgumentException("yes or no, was \"" + text + "\"");
        }
    }

    /** The text of a fact as typed. */
    public Optional<String> told(Fact fact) {
        return Optional.ofNullable(facts.get(fact));
    }

    public Optional<Access> access() {
        return told(Fact.ACCESS).map(Access::of);
    }

    public Optional<Runs> runs() {
        return told(Fact.RUNS).map(Runs::of);
    }

    public Optional<RpmRange> band() {
        return told(Fact.BAND).map(RpmRange::parse);
    }

    /** The rule that calls a compression low: as chosen, else 75 % of the highest. */
    public CompressionRule compressionRule() {
        return told(Fact.COMPRESSION_RULE).map(CompressionRule::of).orElse(CompressionRule.SHARE_75);
    }

    /** A length or percentage that was told. */
    public Optional<Quantity> quantity(Fact fact) {
        Dimension dimension = fact.kind() == Fact.Kind.PERCENT ? Dimension.SHARE : Dimension.LENGTH;
        return told(fact).map(text -> Quantity.parse(text, dimension));
    }

    /**
     * The smallest difference of power worth paying for, percent: as told, else 1 % (judgement, see docs/methods/changes.md).
     */
    public double smallestDifferencePercent() {
        return quantity(Fact.SMALLEST_DIFFERENCE)
                .map(told -> told.in(Unit.PERCENT))
                .orElse(SMALLEST_UNLESS_TOLD);
    }

    public Optional<Money> money(Fact fact) {
        return told(fact).map(Money::parse);
    }

    /** Whether the car may be yours but is not yet: less than "own it" is permitted. */
    public boolean beforePurchase() {
        return access().map(access -> access != Access.OWN_IT).orElse(false);
    }
}
