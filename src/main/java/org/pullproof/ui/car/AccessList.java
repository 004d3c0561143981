package org.pullproof.ui.car;

import java.util.Arrays;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.car.Access;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** What the owner permits now: one of five levels, chosen by arrows or a click. */
final class AccessList extends ListView<Access> {
    private static final double ROW = 29;
    private static final double WORDS = 110;

    private final CarViewModel model;
    private Optional<Access> asked = Optional.empty();

    AccessList(CarViewModel model) {
        super(javafx.collections.FXCollections.observableList(Arrays.asList(Access.values())));
        this.model = model;
        setAccessibleRole(AccessibleRole.LIST_VIEW);
        setAccessibleText("What the owner permits now");
        setFixedCellSize(ROW);
        double height = ROW * Access.values().length + 2;
        setMinHeight(height);
        setMaxHeight(height);
        setCellFactory(list -> new Level());
        getSelectionModel().selectedItemProperty().addListener((of, before, chosen) -> choose(chosen));
    }

    private void choose(@Nullable Access chosen) {
        if (chosen != null && !Optional.of(chosen).equals(asked.or(this::told))) {
            asked = Optional.of(chosen);
            model.permit(chosen);
        }
    }

    private Optional<Access> told() {
        return model.session().car().access();
    }

    /** While an answer of before comes late, the choice stays where the person has moved it. */
    void show() {
        if (asked.isPresent() && !asked.equals(told())) {
            refresh();
            return;
        }
        asked = Optional.empty();
        told().ifPresentOrElse(getSelectionModel()::select, getSelectionModel()::clearSelection);
        refresh();
    }

    /** A level with its mark, and what it adds to the one above. */
    private final class Level extends ListCell<Access> {
        @Override
        protected void updateItem(@Nullable Access access, boolean empty) {
            super.updateItem(access, empty);
            setText(null);
            setGraphic(access == null || empty ? null : line(access));
        }

        private HBox line(Access access) {
            boolean chosen =
                    model.session().car().access().filter(access::equals).isPresent();
            Label words = Labels.whole(access.words(), chosen ? "strong" : "plain");
            words.setPrefWidth(WORDS);
            HBox line = new HBox(
                    10, (chosen ? Mark.CHOSEN : Mark.CHOICE).node(), words, Labels.whole(access.allows(), "caption"));
            line.setAlignment(Pos.CENTER_LEFT);
            return line;
        }
    }
}
