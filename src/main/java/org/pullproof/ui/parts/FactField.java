package org.pullproof.ui.parts;

import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.car.FactWords;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** A fact of the car edited where it stands; read by the same rules as everywhere ({@link Car#with}). */
public final class FactField extends CheckedField<String> {

    /**
     * @param fact which
     * @param figures how figures are written now: a bare length takes their unit
     * @param told what happens with a text that can be read; an empty one forgets the fact
     */
    public FactField(Fact fact, Supplier<Figures> figures, BiConsumer<Fact, String> told) {
        super(fact.words(), text -> read(fact, text, figures.get()));
        getStyleClass().add("fact-field");
        field().setPromptText(prompt(fact, figures.get()));
        readsAtRest(kept -> FactWords.of(fact, beforeTheReason(fact, kept)));
        onTaken(text -> told.accept(fact, text));
        onForgotten(() -> told.accept(fact, ""));
    }

    private static String read(Fact fact, String typed, Figures figures) {
        if (!beforeTheReason(fact, typed).equals(typed)) {
            read(fact, beforeTheReason(fact, typed), figures);
            return typed;
        }
        String text = switch (fact.kind()) {
            case LENGTH -> withUnit(fact, Typed.unmistakable(typed), figures);
            case MONEY -> Typed.money(typed);
            default -> typed;
        };
        return Car.named("this car").with(fact, text).told(fact).orElseThrow();
    }

    /** Behind a semicolon stands why the band is changed. */
    private static String beforeTheReason(Fact fact, String typed) {
        boolean reasoned = fact.kind() == Fact.Kind.BAND && typed.contains(";");
        return reasoned ? typed.substring(0, typed.indexOf(';')) : typed;
    }

    private static String withUnit(Fact fact, String typed, Figures figures) {
        return Quantity.parse(typed, figures.unit(shownAs(fact))).toString();
    }

    private static Shown shownAs(Fact fact) {
        return fact == Fact.ELEVATION ? Shown.ELEVATION : Shown.DISTANCE;
    }

    private static String prompt(Fact fact, Figures figures) {
        return switch (fact.kind()) {
            case LENGTH -> "not told, " + figures.unit(shownAs(fact)).symbol();
            case MONEY -> "not told, as 1400USD";
            case BAND -> "not told, as 2600-5000rpm";
            case PERCENT -> "not told, as 1%";
            case RULE -> "75-percent unless told";
            case YES_NO -> "not told, yes or no";
            case NUMBER, WORDS, ACCESS, RUNS -> "not told";
        };
    }
}
