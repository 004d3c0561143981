package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.TestOrder.Stop;
import org.pullproof.testing.Tools;

/** Orders are common practice, no source. */
class TestOrderTest {
    private final EngineProfile v8 = Tools.profile("v8-distributor-order-a");

    @Test
    void compressionIsReadByNumber() {
        assertThat(TestOrder.of(TestKind.COMPRESSION_DRY, v8).cylinders()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
    }

    @Test
    void leakDownFollowsTheFiringOrderBecauseTheCrankIsTurned() {
        assertThat(TestOrder.of(TestKind.LEAKDOWN, v8).cylinders()).containsExactly(1, 8, 4, 3, 6, 5, 7, 2);
    }

    @Test
    void balanceGoesThereAndBack() {
        TestOrder balance = TestOrder.of(TestKind.BALANCE, Tools.profile("i4-coil-on-plug"));

        assertThat(balance.stops())
                .containsExactly(
                        new Stop(1, 1),
                        new Stop(2, 1),
                        new Stop(3, 1),
                        new Stop(4, 1),
                        new Stop(4, 2),
                        new Stop(3, 2),
                        new Stop(2, 2),
                        new Stop(1, 2));
        assertThat(balance.rounds()).isEqualTo(2);
    }

    @Test
    void afterTheLastCylinderComesTheFirst() {
        assertThat(TestOrder.of(TestKind.LEAKDOWN, v8).after(2)).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(names = {"BALANCE", "COMPRESSION_DRY", "COMPRESSION_WET", "LEAKDOWN", "PLUG"})
    void everyCylinderIsReadOnceARound(TestKind test) {
        TestOrder order = TestOrder.of(test, v8);

        assertThat(order.cylinders()).containsExactlyInAnyOrder(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(order.stops()).doesNotHaveDuplicates().hasSize(8 * order.rounds());
    }
}
