package org.pullproof.worth.question;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.Normal;
import org.pullproof.worth.trade.Catalogue;
import org.pullproof.worth.trade.CureCost;
import org.pullproof.worth.trade.FaultRow;

/** What each fault of one engine does to the money, from the rows of the catalogue. */
final class FaultTable {
    private static final int FEW = 4;
    private static final int SIX = 6;
    private static final int EIGHT = 8;

    private final Catalogue catalogue;
    private final FaultKeys keys;
    private final double dollar;

    FaultTable(Catalogue catalogue, FaultKeys keys) {
        this.catalogue = catalogue;
        this.keys = keys;
        this.dollar = catalogue.number("rate.dollar");
    }

    /**
     * @param readingsSpeak chance of a fault from which readings speak for it, by key of the fault
     */
    Map<String, FaultMoney> of(EngineStates states, Map<String, Double> readingsSpeak) {
        Map<String, FaultMoney> table = new LinkedHashMap<>();
        for (FaultRow row : catalogue.faults()) {
            for (String key : states.faults()) {
                if (keys.row(key).equals(row.key())) {
                    boolean read = readingsSpeak.containsKey(row.key())
                            && states.chanceOfAny(java.util.Set.of(key)) >= readingsSpeak.getOrDefault(row.key(), 1.0);
                    table.put(key, money(row, key, read));
                }
            }
        }
        return table;
    }

    private FaultMoney money(FaultRow row, String key, boolean read) {
        OptionalDouble cure = row.hidden() ? OptionalDouble.empty() : new CureCost(catalogue).of(row);
        return new FaultMoney(
                keys.bank(key)
                        .map(bank -> row.words() + ", bank " + bank.name())
                        .orElse(row.words()),
                dollar * catalogue.number(row.number("discount")),
                catalogue.number(row.number("hazard")),
                restores(row),
                row.tired(),
                read,
                cure.isPresent() ? Optional.of(dollar * cure.getAsDouble()) : Optional.empty());
    }

    /** For other counts than four, six and eight the figure of four times 4/N, where the row differs by count at all. */
    private Normal restores(FaultRow row) {
        int cylinders = keys.profile().cylinders();
        double four = catalogue.number(row.number("restores.four"));
        double eight = catalogue.number(row.number("restores.eight"));
        double mean = switch (cylinders) {
            case FEW -> four;
            case SIX -> catalogue.number(row.number("restores.six"));
            case EIGHT -> eight;
            default -> four == eight ? four : four * FEW / cylinders;
        };
        return new Normal(mean, Math.min(mean, sd(row, cylinders)));
    }

    private double sd(FaultRow row, int cylinders) {
        String common = cylinders <= FEW ? "gain.restores-sd.four" : "gain.restores-sd.more";
        return catalogue
                .numbers()
                .find(row.number("restores.sd"))
                .map(own -> own.value())
                .orElseGet(() -> catalogue.number(common));
    }
}
