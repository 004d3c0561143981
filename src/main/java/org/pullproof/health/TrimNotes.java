package org.pullproof.health;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pullproof.engine.Bank;
import org.pullproof.units.Figures;

/**
 * What the fuel trims of the banks say beside the readings of the cylinders: fuel added to one bank only points to that bank, to
 * all of them to what they share (common practice, no source). It decides nothing.
 */
final class TrimNotes {
    private final Evidence evidence;
    private final double away;

    TrimNotes(Evidence evidence, HealthLimits limits) {
        this.evidence = evidence;
        this.away = limits.trimAway();
    }

    List<String> all() {
        Map<String, Double> trims = trims();
        Map<String, Double> far = trims.entrySet().stream()
                .filter(trim -> Math.abs(trim.getValue()) > away)
                .collect(Collectors.toMap(
                        Map.Entry::getKey, Map.Entry::getValue, (one, other) -> other, LinkedHashMap::new));
        List<String> notes = new ArrayList<>();
        far.forEach((bank, percent) -> notes.add(sentence(bank, percent, far.size() == trims.size())));
        return notes;
    }

    /** The last trim told of each bank, percent. */
    private Map<String, Double> trims() {
        Map<String, Double> trims = new LinkedHashMap<>();
        for (Bank bank : evidence.profile().banks()) {
            bank.cylinders().stream()
                    .flatMap(cylinder -> evidence.sign(cylinder, TestKind.TRIMS).stream())
                    .flatMap(sign -> sign.figure().stream())
                    .reduce((one, next) -> next)
                    .ifPresent(share -> trims.put(bank.name(), share.si() * 100));
        }
        return trims;
    }

    private String sentence(String bank, double percent, boolean everyBank) {
        String what = "Bank " + bank + " trims " + Figures.signedPercent(percent, 0);
        if (percent < 0) {
            return what
                    + ": the computer takes fuel away; a leaking injector, high fuel pressure or oil thinned by fuel.";
        }
        return what
                + (everyBank
                        ? ": the computer adds fuel everywhere; air behind the meter, a dirty meter or low fuel pressure."
                        : ": the computer adds fuel to this bank alone; look for a vacuum leak, a weak injector or an exhaust leak"
                                + " before the sensor on it.");
    }
}
