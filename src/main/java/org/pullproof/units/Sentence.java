package org.pullproof.units;

import java.util.ArrayList;
import java.util.List;

/**
 * A sentence with some words set in bold, marked by {@code **} on both sides, so that the screen, the report and the command
 * line say the same words.
 *
 * @param marked the sentence with its marks
 */
public record Sentence(String marked) {

    /** A run of words set the same way. */
    public record Part(String words, boolean bold) {}

    /** The sentence without marks. */
    public String plain() {
        return marked.replace("**", "");
    }

    /** The runs in order; empty runs are left out. */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        String[] runs = marked.split("\\*\\*", -1);
        for (int i = 0; i < runs.length; i++) {
            if (!runs[i].isEmpty()) {
                parts.add(new Part(runs[i], i % 2 == 1));
            }
        }
        return List.copyOf(parts);
    }
}
