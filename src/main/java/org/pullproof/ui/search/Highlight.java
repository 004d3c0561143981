package org.pullproof.ui.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.pullproof.units.Sentence.Part;

/** A title cut where the words of the question stand in it. */
final class Highlight {
    private Highlight() {}

    /** The runs of a title in order; those that the question names are bold. */
    static List<Part> of(String title, String question) {
        BitSet named = named(Ranking.plain(title), question);
        List<Part> parts = new ArrayList<>();
        for (int from = 0; from < title.length(); ) {
            boolean bold = named.get(from);
            int next = bold ? named.nextClearBit(from) : named.nextSetBit(from);
            int to = next < 0 ? title.length() : Math.min(next, title.length());
            parts.add(new Part(title.substring(from, to), bold));
            from = to;
        }
        return List.copyOf(parts);
    }

    private static BitSet named(String title, String question) {
        BitSet named = new BitSet();
        for (String word : Ranking.words(question)) {
            Ranking.places(title, word).forEach(at -> named.set(at, at + word.length()));
        }
        return named;
    }
}
