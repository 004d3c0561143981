package org.pullproof.worth.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.files.MoneyCatalogueFile;

class CatalogueTest {
    private final Catalogue catalogue = MoneyCatalogueFile.read();

    /** Table of costs and gains of the trade: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "work.rings.p50, 1300",
        "work.rebuild.p90, 9500",
        "work.rebuild.hazard, 0.03",
        "work.used-untested.chance, NaN",
        "fault.rings.restores.eight, 5",
        "fault.gasket-coolant.hazard, 0.35",
        "fault.bottom-end.hazard, 0.4",
        "car.resale-share, 0.35",
        "owner.value-per-hp, 20",
        "overrun.hours.p90, 2.6"
    })
    void theNumbersAreThoseOfTheTrade(String key, double value) {
        if (Double.isNaN(value)) {
            assertThat(catalogue.numbers().find(key)).isEmpty();
        } else {
            assertThat(catalogue.number(key)).isEqualTo(value);
        }
    }

    /**
     * By hand: the cheapest full cure of a restricted exhaust is its part, 200 · 1.15 + 3 h · 30 = 320; of a leaking valve one head off
     * and done, 60 · 1.15 + 6 · 30 + 590 · 1.15 + 8 · 30 = 1167.5; of worn rings a used engine, 1100 · 1.15 + 25 · 30 = 2015.
     */
    @ParameterizedTest
    @CsvSource({"exhaust-restricted, 320", "rings, 2015", "crack, 0"})
    void aBuyerTakesOffWhatTheCheapestFullCureCosts(String fault, double discount) {
        assertThat(catalogue.number("fault." + fault + ".discount")).isCloseTo(discount, within(1e-9));
    }

    @Test
    void aDearerCureMakesABuyerTakeOffMoreUnlessTheOwnerSaysHowMuch() {
        assertThat(catalogue.with(Map.of("work.exhaust-part.p50", 300.0)).number("fault.exhaust-restricted.discount"))
                .isCloseTo(300 * 1.15 + 90, within(1e-9));
        Map<String, Double> own = Map.of("work.exhaust-part.p50", 300.0, "fault.exhaust-restricted.discount", 50.0);
        assertThat(catalogue.with(own).number("fault.exhaust-restricted.discount"))
                .isEqualTo(50);
    }

    @Test
    void aNumberThatThereIsNotIsRefusedByName() {
        assertThatThrownBy(() -> catalogue.with(Map.of("work.wings.p50", 1.0))).hasMessageContaining("work.wings.p50");
    }

    @Test
    void everyPlanNamesWorksAndPartsThatThereAre() {
        catalogue.plans().forEach(plan -> known(plan.tree()));
        catalogue.parts().values().forEach(this::known);
    }

    private void known(Branch branch) {
        if (branch instanceof Branch.Do act) {
            act.works().forEach(work -> assertThat(catalogue.work(work)).isNotNull());
            known(act.then());
        } else if (branch instanceof Branch.See see) {
            see.sights().forEach(sight -> known(sight.then()));
        } else if (branch instanceof Branch.Back back) {
            List.of(back.back(), back.weak()).forEach(this::known);
        } else if (branch instanceof Branch.Choose choose) {
            choose.choices().values().forEach(this::known);
        } else if (branch instanceof Branch.Part part) {
            assertThat(catalogue.part(part.name())).isNotNull();
        }
    }
}
