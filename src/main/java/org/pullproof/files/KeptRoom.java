package org.pullproof.files;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Decides which versions of a session go when there is room for no more, so that a row of commands does not push out the days before.
 *
 * <p>The first to go is the oldest of those kept less than half an hour after the one before; if there is none, the oldest that is not
 * the first of its day; if there is none either, the oldest. The newest stays. A version whose time lies before that of the one
 * before it, by a clock set back, counts as the first of its day. <i>Own judgement, no source.</i>
 */
final class KeptRoom {
    private static final Duration CLOSE = Duration.ofMinutes(30);

    private final int most;

    /**
     * @param most as many as there is room for, at least 2
     */
    KeptRoom(int most) {
        this.most = most;
    }

    /**
     * @param all in the order of keeping, the oldest first
     * @return those that go
     */
    List<KeptVersion> tooMany(List<KeptVersion> all) {
        List<KeptVersion> left = new ArrayList<>(all);
        List<KeptVersion> going = new ArrayList<>();
        while (left.size() > most) {
            KeptVersion next = oldest(left, KeptRoom::isClose)
                    .or(() -> oldest(left, KeptRoom::isOfOneDay))
                    .orElse(left.get(0));
            going.add(next);
            left.remove(next);
        }
        return going;
    }

    /** The oldest, but for the first and the newest, that stands so to the one before it. */
    private static Optional<KeptVersion> oldest(List<KeptVersion> all, BiPredicate<KeptVersion, KeptVersion> stands) {
        for (int i = 1; i < all.size() - 1; i++) {
            if (stands.test(all.get(i - 1), all.get(i))) {
                return Optional.of(all.get(i));
            }
        }
        return Optional.empty();
    }

    private static boolean isClose(KeptVersion before, KeptVersion version) {
        Duration between = Duration.between(before.time(), version.time());
        return !between.isNegative() && between.compareTo(CLOSE) < 0;
    }

    private static boolean isOfOneDay(KeptVersion before, KeptVersion version) {
        return before.time().toLocalDate().equals(version.time().toLocalDate())
                && !version.time().isBefore(before.time());
    }
}
