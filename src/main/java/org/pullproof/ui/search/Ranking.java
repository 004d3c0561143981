package org.pullproof.ui.search;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.pullproof.units.Figures;

/**
 * Finds things by the words of a question and puts the best answers first. Every word of the question has to stand somewhere in
 * the title or the detail; capitals and accents do not matter, and a figure has to begin a figure: 6 is not found in 146. A whole word of the title counts most, then the beginning of one, then one inside
 * the title, then one in the detail; a title that begins with the whole question comes before all others. Groups stand together,
 * the one with the best answer first. What answers equally well keeps the order it came in.
 */
public final class Ranking {
    private static final int TITLE_BEGINS = 100;
    private static final int WHOLE_WORD = 5;
    private static final int WORD_BEGINS = 4;
    private static final int IN_TITLE = 2;
    private static final int IN_DETAIL = 1;

    private record Scored(Found found, int score, int place) {}

    private Ranking() {}

    /** What answers a question; an empty question is answered with everything that can be done. */
    public static List<Found> of(List<Found> all, String question) {
        String asked = plain(question).strip();
        if (asked.isEmpty()) {
            return all.stream().filter(found -> found.group() == Group.DO).toList();
        }
        List<Scored> hits = IntStream.range(0, all.size())
                .mapToObj(i -> new Scored(all.get(i), score(all.get(i), asked), i))
                .filter(scored -> scored.score() > 0)
                .toList();
        Map<Group, Integer> best = new EnumMap<>(Group.class);
        hits.forEach(hit -> best.merge(hit.found().group(), hit.score(), Math::max));
        return hits.stream()
                .sorted(Comparator.comparingInt(
                                (Scored hit) -> -best.getOrDefault(hit.found().group(), 0))
                        .thenComparing(hit -> hit.found().group())
                        .thenComparingInt(hit -> -hit.score())
                        .thenComparingInt(Scored::place))
                .map(Scored::found)
                .toList();
    }

    private static int score(Found found, String asked) {
        String title = plain(found.title());
        String detail = plain(found.detail());
        int sum = title.startsWith(asked) ? TITLE_BEGINS : 0;
        for (String word : words(asked)) {
            int one = score(word, title, detail);
            if (one == 0) {
                return 0;
            }
            sum += one;
        }
        return sum;
    }

    private static int score(String word, String title, String detail) {
        if (places(title, word).findAny().isPresent()) {
            return best(title, word);
        }
        return places(detail, word).findAny().isPresent() ? IN_DETAIL : 0;
    }

    private static int best(String title, String word) {
        return places(title, word)
                .map(at -> !begins(title, at) ? IN_TITLE : ends(title, at + word.length()) ? WHOLE_WORD : WORD_BEGINS)
                .max()
                .orElseThrow();
    }

    /** Where a word of a question stands in a text, both {@linkplain #plain plain}. */
    static IntStream places(String text, String word) {
        boolean figure = Character.isDigit(word.charAt(0));
        return IntStream.iterate(text.indexOf(word), at -> at >= 0, at -> text.indexOf(word, at + 1))
                .filter(at -> !figure || begins(text, at));
    }

    private static boolean begins(String text, int at) {
        return at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
    }

    private static boolean ends(String text, int at) {
        return at == text.length() || !Character.isLetterOrDigit(text.charAt(at));
    }

    /** The words of a question. */
    static List<String> words(String question) {
        return Arrays.stream(plain(question).split("\\s+", -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Small letters without accents, as many as before. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            String letter = text.substring(i, i + 1);
            plain.append(Normalizer.normalize(letter, Normalizer.Form.NFD).charAt(0));
        }
        // ROOT keeps one letter for one letter but for İ, which was opened above
        return plain.toString().toLowerCase(Locale.ROOT).replace(Figures.NO_BREAK_SPACE, ' ');
    }
}
