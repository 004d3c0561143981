package org.pullproof.changes;

import java.util.List;

/** Small words that several sentences need. */
final class Wording {
    private static final List<String> NUMBERS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private Wording() {}

    /** {@code base-1, base-2 and base-3}. */
    static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** {@code two gains}. */
    static String count(int number, String one, String many) {
        return word(number) + " " + (number == 1 ? one : many);
    }

    static String word(int number) {
        return number < NUMBERS.size() ? NUMBERS.get(number) : Integer.toString(number);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
