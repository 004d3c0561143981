package org.pullproof.report;

import java.util.List;
import org.pullproof.units.Inert;
import org.pullproof.units.Sentence;

/**
 * Everything a report says, in the order it says it. Text, HTML, PDF and JSON are four ways to write the same model, so no
 * writer knows more than another. Words that people typed have lost what could steer a terminal or break a page.
 *
 * @param name what it is: "Report on an engine"
 * @param carName what the owner calls the car
 * @param engine the engine in a few words: "V8"
 * @param head the cells beside the title: made, setup now, standard, …
 * @param answers the questions of the job, each with its answer
 * @param sections the evidence
 * @param foot what stands at the foot of every page
 */
public record ReportModel(
        String name,
        String carName,
        String engine,
        List<Item> head,
        List<Answer> answers,
        List<Section> sections,
        List<String> foot) {
    public ReportModel {
        carName = Inert.words(carName);
        engine = Inert.words(engine);
        head = List.copyOf(head);
        answers = List.copyOf(answers);
        sections = List.copyOf(sections);
        foot = foot.stream().map(Inert::words).toList();
    }

    /** Car and engine on one line. */
    public String title() {
        return carName + ", " + engine;
    }

    /**
     * A named value.
     *
     * @param key for programs: {@code setupNow}
     * @param name for people: "Setup now"
     * @param words the value
     */
    public record Item(String key, String name, String words) {
        public Item {
            words = Inert.words(words);
        }
    }

    /**
     * A question of the job with its answer.
     *
     * @param key for programs: {@code sound}
     * @param question as it is asked
     * @param answer one or two sentences
     */
    public record Answer(String key, String question, Sentence answer) {
        public Answer {
            answer = new Sentence(Inert.words(answer.marked()));
        }
    }

    /**
     * A part of the evidence.
     *
     * @param key for programs: {@code dyno}
     * @param title for people
     * @param caption how the figures below were made, may be empty
     * @param blocks what it shows, first things first
     */
    public record Section(String key, String title, String caption, List<Block> blocks) {
        public Section {
            caption = Inert.words(caption);
            blocks = List.copyOf(blocks);
        }

        /** Whether its heading stands right over the head of a table, and both must not stand alone at the foot of a page. */
        public boolean beginsWithATable() {
            return !blocks.isEmpty() && blocks.get(0) instanceof Block.Table;
        }
    }
}
