package org.pullproof.worth.question;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.pullproof.car.Car;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.TestKind;
import org.pullproof.worth.MoneyBook;

/**
 * What a session knows that bears on money.
 *
 * @param car with what its owner says
 * @param profile of the engine
 * @param book spendings, options entered, own numbers
 * @param currency of all money that counts
 * @param spent money already spent, in the currency
 * @param health what the readings amount to
 * @param everRead tests whose tool is at hand
 * @param changes the judged changes
 * @param setups in the order they were made
 * @param presentBandKw corrected band power of the present setup, kW; absent if not measured
 */
public record Known(
        Car car,
        EngineProfile profile,
        MoneyBook book,
        String currency,
        double spent,
        HealthFindings health,
        Set<TestKind> everRead,
        ChangeLedger changes,
        List<Setup> setups,
        OptionalDouble presentBandKw) {
    public Known {
        everRead = Set.copyOf(everRead);
        setups = List.copyOf(setups);
    }

    Map<String, Setup> setupsById() {
        return setups.stream().collect(java.util.stream.Collectors.toMap(Setup::id, setup -> setup));
    }
}
