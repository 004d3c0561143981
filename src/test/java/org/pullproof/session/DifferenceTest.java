package org.pullproof.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.car.Fact;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.weather.Standard;

class DifferenceTest {
    private final Session whole = GreyCoupe.session();
    private final Session without = whole.withReadings(
                    whole.readings().subList(0, whole.readings().size() - 2))
            .withCar(whole.car().with(Fact.ODOMETER, "1mi"));

    @Test
    void nothingIsSaidOfTheSameDocument() {
        assertThat(new Difference(whole, whole).words()).isEqualTo("nothing");
    }

    @Test
    void whatWasAddedIsCounted() {
        assertThat(new Difference(without, whole).words()).isEqualTo("facts of the car changed, 2 readings added");
    }

    @Test
    void whatWasTakenAwayIsCounted() {
        assertThat(new Difference(whole, without).words()).contains("2 readings taken away");
    }

    @Test
    void oneIsOne() {
        Session noted = whole.withStandard(Standard.DIN_70020);
        assertThat(new Difference(whole, noted).words()).isEqualTo("standard changed");
        Session corrected = whole.withReadings(java.util.stream.Stream.concat(
                        whole.readings().stream().skip(1),
                        whole.readings().stream().limit(1))
                .toList());
        assertThat(new Difference(whole, corrected).words()).isEqualTo("readings changed");
        Session days = whole.withDays(List.of());
        assertThat(new Difference(days, whole).words()).contains("pulls added");
    }
}
