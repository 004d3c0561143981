package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Room for three; which go is worked by hand from the rule in {@link KeptRoom}. */
class KeptRoomTest {
    private static List<Integer> going(String... times) {
        List<KeptVersion> all = new ArrayList<>();
        for (String time : times) {
            all.add(new KeptVersion(all.size() + 1, LocalDateTime.parse(time)));
        }
        return new KeptRoom(3).tooMany(all).stream().map(KeptVersion::number).toList();
    }

    @Test
    void whereThereIsRoomNoneGoes() {
        assertThat(going("2026-06-14T12:00", "2026-06-14T12:01", "2026-06-14T12:02"))
                .isEmpty();
    }

    @Test
    void theOldestOfThoseCloseToTheOneBeforeGoesFirst() {
        assertThat(going("2026-06-12T12:00", "2026-06-14T12:00", "2026-06-14T12:29", "2026-06-14T12:58"))
                .containsExactly(3);
    }

    @Test
    void halfAnHourApartIsNotClose() {
        assertThat(going("2026-06-12T12:00", "2026-06-12T12:30", "2026-06-14T12:00", "2026-06-14T12:10"))
                .containsExactly(2);
    }

    @Test
    void thenTheOldestThatIsNotTheFirstOfItsDay() {
        assertThat(going("2026-06-12T08:00", "2026-06-13T08:00", "2026-06-13T18:00", "2026-06-14T08:00"))
                .containsExactly(3);
    }

    @Test
    void thenTheOldest() {
        assertThat(going("2026-06-11T08:00", "2026-06-12T08:00", "2026-06-13T08:00", "2026-06-14T08:00"))
                .containsExactly(1);
    }

    @Test
    void theNewestStaysEvenRightAfterTheOneBefore() {
        assertThat(going("2026-06-12T08:00", "2026-06-13T08:00", "2026-06-14T08:00", "2026-06-14T08:01"))
                .containsExactly(1);
    }

    @Test
    void acrossMidnightHalfAnHourIsStillClose() {
        assertThat(going("2026-06-12T08:00", "2026-06-13T23:50", "2026-06-14T00:05", "2026-06-15T08:00"))
                .containsExactly(3);
    }

    @Test
    void withTheClockSetBackAVersionIsNotCloseToTheOneBefore() {
        assertThat(going("2026-06-14T12:00", "2026-06-14T11:50", "2026-06-15T12:00", "2026-06-16T12:00"))
                .containsExactly(1);
    }

    @Test
    void asManyGoAsAreTooMany() {
        assertThat(going(
                        "2026-06-14T12:00",
                        "2026-06-14T12:10",
                        "2026-06-14T12:20",
                        "2026-06-14T12:35",
                        "2026-06-14T12:40"))
                .containsExactly(2, 3);
    }
}
