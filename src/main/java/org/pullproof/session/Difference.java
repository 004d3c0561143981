package org.pullproof.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What was done between two documents of one car.
 *
 * @param before the earlier document
 * @param after the later one
 */
public record Difference(Session before, Session after) {
    /** In one line: "2 readings added, 1 pull taken away, facts of the car changed"; "nothing" if they say the same. */
    public String words() {
        List<String> parts = new ArrayList<>();
        changed(parts, "name of the car changed", session -> session.car().name());
        changed(parts, "facts of the car changed", session -> session.car().facts());
        changed(parts, "engine changed", Session::profile);
        counted(parts, "reading", Session::readings);
        changed(parts, "tune-up changed", Session::tuneUp);
        counted(parts, "setup", Session::setups);
        changed(parts, "another setup in the engine", Session::presentSetup);
        counted(parts, "change", Session::changes);
        changed(parts, "standard changed", Session::standard);
        counted(parts, "reading of the air", Difference::air, "readings of the air");
        counted(parts, "pull", Difference::pulls);
        changed(parts, "money changed", Session::money);
        counted(parts, "note", Session::notes);
        counted(parts, "picture", Session::pictures);
        changed(parts, "seller's figure changed", Session::stated);
        changed(parts, "values of judgement changed", Session::judgement);
        return parts.isEmpty() ? "nothing" : String.join(", ", parts);
    }

    private static List<Object> pulls(Session session) {
        return session.days().stream()
                .flatMap(day -> day.pulls().stream())
                .map(Object.class::cast)
                .toList();
    }

    private static List<Object> air(Session session) {
        return session.days().stream()
                .flatMap(day -> day.air().stream())
                .map(Object.class::cast)
                .toList();
    }

    private void changed(List<String> parts, String words, Function<Session, Object> part) {
        if (!part.apply(before).equals(part.apply(after))) {
            parts.add(words);
        }
    }

    private void counted(List<String> parts, String one, Function<Session, List<?>> items) {
        counted(parts, one, items, one + "s");
    }

    private void counted(List<String> parts, String one, Function<Session, List<?>> items, String many) {
        List<?> old = items.apply(before);
        List<?> now = items.apply(after);
        int more = now.size() - old.size();
        if (more != 0) {
            parts.add(
                    Math.abs(more) + " " + (Math.abs(more) == 1 ? one : many) + (more > 0 ? " added" : " taken away"));
        } else if (!old.equals(now)) {
            parts.add(many + " changed");
        }
    }
}
