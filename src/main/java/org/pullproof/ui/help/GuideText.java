package org.pullproof.ui.help;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.pullproof.ui.parts.Labels;

/** Sets blocks of the guide. */
final class GuideText {
    private static final double LEAST_COLUMN = 120;

    private GuideText() {}

    static Node of(GuideBlock block) {
        if (block instanceof GuideBlock.Heading heading) {
            return Labels.wrapped(heading.words(), "guide-heading");
        }
        if (block instanceof GuideBlock.Paragraph paragraph) {
            return flow(paragraph.runs());
        }
        if (block instanceof GuideBlock.Point point) {
            return point(point);
        }
        if (block instanceof GuideBlock.Table table) {
            return table(table.rows());
        }
        return code((GuideBlock.Code) block);
    }

    private static TextFlow flow(List<GuideRun> runs) {
        TextFlow flow = new TextFlow(runs.stream().map(GuideText::text).toArray(Text[]::new));
        flow.getStyleClass().addAll("sentence", "guide-words");
        return flow;
    }

    private static Text text(GuideRun run) {
        Text text = new Text(run.words());
        text.getStyleClass()
                .add(
                        run.style() == GuideRun.Style.PLAIN
                                ? "words"
                                : run.style().name().toLowerCase(Locale.ROOT));
        return text;
    }

    private static HBox point(GuideBlock.Point point) {
        TextFlow words = flow(point.runs());
        HBox.setHgrow(words, Priority.ALWAYS);
        return new HBox(8, Labels.whole("–", "second"), words);
    }

    private static GridPane table(List<List<List<GuideRun>>> rows) {
        GridPane table = new GridPane();
        table.getStyleClass().add("guide-table");
        int columns = rows.get(0).size();
        for (int column = 0; column < columns; column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setMinWidth(LEAST_COLUMN);
            // the first column names, the others tell
            width.setPercentWidth(column == 0 ? 38 : 62.0 / (columns - 1));
            table.getColumnConstraints().add(width);
        }
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                table.add(cell(rows.get(row).get(column), row == 0), column, row);
            }
        }
        return table;
    }

    private static VBox cell(List<GuideRun> runs, boolean head) {
        VBox cell = new VBox(flow(runs));
        cell.getStyleClass().add(head ? "guide-head" : "guide-cell");
        return cell;
    }

    private static Label code(GuideBlock.Code code) {
        return Labels.wrapped(code.lines(), "guide-code");
    }
}
