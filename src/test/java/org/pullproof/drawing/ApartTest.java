package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ApartTest {

    @Test
    void labelsThatStandApartStayWhereTheyAre() {
        assertThat(Apart.spread(List.of(10.0, 40.0, 70.0), 15, 0, 100)).containsExactly(10.0, 40.0, 70.0);
    }

    @RepeatedTest(50)
    void anyLabelsEndUpApartInsideAndInTheirOrder(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        List<Double> wanted = DoubleStream.generate(() -> random.nextDouble() * 140 - 20)
                .limit(6)
                .boxed()
                .toList();

        List<Double> places = Apart.spread(wanted, 15, 0, 100);

        List<Double> sorted = places.stream().sorted().toList();
        for (int i = 1; i < sorted.size(); i++) {
            assertThat(sorted.get(i) - sorted.get(i - 1)).isGreaterThanOrEqualTo(15 - 1e-9);
        }
        assertThat(places).allSatisfy(place -> assertThat(place).isBetween(0.0, 100.0));
        assertThat(places.get(0) < places.get(1)).isEqualTo(wanted.get(0) < wanted.get(1));
    }
}
