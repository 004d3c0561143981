package org.pullproof.health;

import java.util.List;
import java.util.stream.Collectors;

/** Small pieces of sentences: counts in words and lists of cylinders. */
public final class Phrase {
    private static final List<String> COUNTS = List.of(
            "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Phrase() {}

    /** A count from 0 to 12 in words, a larger one in figures. */
    public static String count(int number) {
        return number < COUNTS.size() ? COUNTS.get(number) : String.valueOf(number);
    }

    /** {@code cylinder 3}, {@code cylinders 2 and 5}, {@code cylinders 1 to 8}; numbers in rising order. */
    public static String cylinders(List<Integer> numbers) {
        if (numbers.size() == 1) {
            return "cylinder " + numbers.get(0);
        }
        int first = numbers.get(0);
        int last = numbers.get(numbers.size() - 1);
        boolean run = numbers.size() > 2 && last - first == numbers.size() - 1;
        return "cylinders " + (run ? first + " to " + last : list(numbers));
    }

    /** {@code 2}, {@code 2 and 5}, {@code 2, 5 and 7}. */
    public static String list(List<?> things) {
        int last = things.size() - 1;
        if (last < 1) {
            return things.stream().map(String::valueOf).collect(Collectors.joining());
        }
        return things.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", ")) + " and "
                + things.get(last);
    }

    public static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
