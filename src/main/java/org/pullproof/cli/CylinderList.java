package org.pullproof.cli;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cylinders as they are typed: {@code 1,3}; {@code all} is the whole engine. */
final class CylinderList {
    private CylinderList() {}

    /**
     * @return the cylinders; empty for all
     * @throws IllegalArgumentException with a sentence if it is no list of numbers
     */
    static List<Integer> parse(String text) {
        if (text.strip().equals("all")) {
            return List.of();
        }
        if (!text.strip().matches("\\d{1,2}(\\s*,\\s*\\d{1,2})*")) {
            throw new IllegalArgumentException("\"" + text + "\" is no list of cylinders: write 3 or 1,3,5 or all.");
        }
        return Stream.of(text.strip().split("\\s*,\\s*", -1))
                .map(Integer::valueOf)
                .toList();
    }

    static String words(Collection<Integer> cylinders) {
        return cylinders.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
