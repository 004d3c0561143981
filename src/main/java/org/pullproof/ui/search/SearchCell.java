package org.pullproof.ui.search;

import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.jspecify.annotations.Nullable;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Sentence;

/** A group's name in small, or title, detail and key of something found. */
final class SearchCell extends ListCell<SearchLine> {
    private static final int LINE = 76;
    private static final double WIDEST = 600;

    private final Supplier<String> question;

    /**
     * @param question as typed now, to mark its words
     */
    SearchCell(Supplier<String> question) {
        this.question = question;
        getStyleClass().add("search-cell");
    }

    @Override
    protected void updateItem(@Nullable SearchLine line, boolean empty) {
        super.updateItem(line, empty);
        setText(null);
        setPrefWidth(0);
        setGraphic(empty || line == null ? null : graphic(line));
        setMouseTransparent(!(line instanceof SearchLine.Hit));
    }

    private Region graphic(SearchLine line) {
        if (line instanceof SearchLine.Head head) {
            return Labels.whole(head.group().words(), "caption");
        }
        return found(((SearchLine.Hit) line).what());
    }

    private HBox found(Found found) {
        TextFlow title = new TextFlow(Highlight.of(found.title(), question.get()).stream()
                .map(SearchCell::words)
                .toArray(Text[]::new));
        title.getStyleClass().addAll("sentence", "search-title");
        title.setMinWidth(USE_PREF_SIZE);
        title.setMaxHeight(USE_PREF_SIZE);
        Label detail = Labels.wrapped(found.detail(), "second");
        detail.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(detail, Priority.ALWAYS);
        Label key = Labels.whole(found.key(), "key");
        HBox line = isLong(found) ? new HBox(12, below(title, detail), key) : new HBox(12, title, detail, key);
        line.setAlignment(Pos.CENTER_LEFT);
        // a flow of text would else begin at the top of the line
        line.setFillHeight(false);
        return line;
    }

    private static boolean isLong(Found found) {
        return found.title().length() + found.detail().length() > LINE;
    }

    /** What has no room beside a long title stands under it; neither is cut. */
    private static VBox below(TextFlow title, Label detail) {
        title.setMinWidth(0);
        title.setPrefWidth(WIDEST);
        detail.setPrefWidth(WIDEST);
        VBox both = new VBox(title, detail);
        both.setPadding(new Insets(5, 0, 6, 0));
        HBox.setHgrow(both, Priority.ALWAYS);
        return both;
    }

    private static Text words(Sentence.Part part) {
        Text text = new Text(part.words());
        text.getStyleClass().add(part.bold() ? "bold" : "words");
        return text;
    }
}
