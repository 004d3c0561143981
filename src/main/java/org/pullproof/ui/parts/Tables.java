package org.pullproof.ui.parts;

import java.util.List;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.text.Text;

/** Columns and heights of tables in the look. */
public final class Tables {
    private static final double HEADER = 26;

    private Tables() {}

    /** A column of words. */
    public static <R> TableColumn<R, String> words(String title, double width, Function<R, String> words) {
        TableColumn<R, String> column = new TableColumn<>(title);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(words.apply(row.getValue())));
        column.setComparator(new AsPeopleCount());
        fix(column, width);
        return column;
    }

    /** A column of words that take as many lines as they need. */
    public static <R> TableColumn<R, String> wrapping(String title, double width, Function<R, String> words) {
        TableColumn<R, String> column = words(title, width, words);
        column.setMinWidth(width / 2);
        column.setCellFactory(of -> new WrappingCell<>());
        return column;
    }

    /** A column of figures, set to the right. */
    public static <R> TableColumn<R, String> figures(String title, double width, Function<R, String> words) {
        TableColumn<R, String> column = words(title, width, words);
        column.getStyleClass().add("figure");
        return column;
    }

    /** A column whose cells are built by hand. */
    public static <R> TableColumn<R, R> nodes(String title, double width, Function<R, Node> node) {
        TableColumn<R, R> column = new TableColumn<>(title);
        column.setCellValueFactory(row -> new javafx.beans.property.ReadOnlyObjectWrapper<>(row.getValue()));
        column.setCellFactory(of -> new NodeCell<>(node));
        column.setSortable(false);
        fix(column, width);
        return column;
    }

    private static void fix(TableColumn<?, ?> column, double width) {
        column.setPrefWidth(width);
        column.setMinWidth(width);
        column.setReorderable(false);
    }

    /** Lets a person sort by a column's head and choose the columns shown; a table is not sorted until then. */
    public static void letChoose(TableView<?> table) {
        table.setTableMenuButtonVisible(true);
    }

    /** Shows other rows in the order a person sorted them by. */
    public static <R> void show(TableView<R> table, List<R> rows) {
        table.getItems().setAll(rows);
        table.sort();
    }

    /** Makes a table as high as its rows, so that the sheet scrolls and not the table. */
    public static void fitRows(TableView<?> table, double rowHeight) {
        table.setFixedCellSize(rowHeight);
        var height = Bindings.size(table.getItems()).multiply(rowHeight).add(HEADER);
        table.minHeightProperty().bind(height);
        table.prefHeightProperty().bind(height);
        table.maxHeightProperty().bind(height);
    }

    private static final class WrappingCell<R> extends TableCell<R, String> {
        private final Text text = new Text();

        WrappingCell() {
            text.getStyleClass().add("cell-text");
            text.wrappingWidthProperty().bind(widthProperty().subtract(10));
            setPrefHeight(USE_COMPUTED_SIZE);
        }

        @Override
        protected void updateItem(String words, boolean empty) {
            super.updateItem(words, empty);
            text.setText(empty || words == null ? "" : words);
            setGraphic(empty ? null : text);
        }
    }

    private static final class NodeCell<R> extends TableCell<R, R> {
        private final Function<R, Node> node;

        NodeCell(Function<R, Node> node) {
            this.node = node;
        }

        @Override
        protected void updateItem(R row, boolean empty) {
            super.updateItem(row, empty);
            setGraphic(empty || row == null ? null : node.apply(row));
        }
    }
}
