package org.pullproof.app;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.Role;
import org.pullproof.dyno.Trace;
import org.pullproof.session.Problem;

/**
 * When each of the pulls was made that are taken in together: told for the first, else what its file says, else when its file was
 * written. Later pulls of one file stand as far behind as its clock says. Where nothing tells, a pull is put {@link #APART} behind the
 * one before it, so that the order is kept, and that is said.
 */
final class PullTimes {
    /** An hour of dyno time is ten to twelve pulls (C, common practice without a source). */
    private static final Duration APART = Duration.ofMinutes(5);

    private final List<LocalDateTime> all = new ArrayList<>();
    private final TreeSet<Integer> guessed = new TreeSet<>();

    PullTimes(Optional<LocalDateTime> told, List<AddPulls.ReadFile> files) {
        for (AddPulls.ReadFile file : files) {
            all.add(first(told, file));
            addLater(file);
        }
    }

    private LocalDateTime first(Optional<LocalDateTime> told, AddPulls.ReadFile file) {
        LocalDateTime written = file.file().changed().truncatedTo(ChronoUnit.SECONDS);
        if (told.isEmpty()) {
            return file.table().time(written).orElse(written);
        }
        return all.isEmpty() ? told.get() : apart();
    }

    private void addLater(AddPulls.ReadFile file) {
        List<Trace> pulls = file.table().pulls();
        LocalDateTime first = all.get(all.size() - 1);
        for (Trace pull : pulls.subList(1, pulls.size())) {
            double second = begins(pull) - begins(pulls.get(0));
            boolean clear = Double.isFinite(second)
                    && second > 0
                    && !first.plusSeconds(Math.round(second)).isBefore(all.get(all.size() - 1));
            all.add(clear ? first.plusSeconds(Math.round(second)) : apart());
        }
    }

    private static double begins(Trace pull) {
        return pull.recording().at(Role.TIME, 0);
    }

    private LocalDateTime apart() {
        guessed.add(all.size());
        return all.get(all.size() - 1).plus(APART);
    }

    /** One time a pull, in order. */
    List<LocalDateTime> all() {
        return List.copyOf(all);
    }

    /** Says which times are not known. */
    List<Problem> guesses(List<Pull> pulls) {
        return guessed.stream()
                .map(i -> new Problem(
                        pulls.get(i).file().original(),
                        "",
                        "when pull " + pulls.get(i).id() + " was made is not told; it is put " + APART.toMinutes()
                                + " minutes behind the one before it."))
                .toList();
    }
}
