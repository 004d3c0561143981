package org.pullproof.ui.tuneup;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** The start gate: what stands in the way, each with its step, and what may stay off with a reason. */
final class GateBox extends VBox {
    private static final String LAW = "Parts of the emission control are refitted: local law says what may be removed.";

    private final TuneUpViewModel model;

    GateBox(TuneUpViewModel model) {
        this.model = model;
        getStyleClass().add("framed");
        setFocusTraversable(true);
        setAccessibleText("Start gate");
    }

    /** Where the key G comes to: the first thing that may stay off, else the gate itself. */
    Node first() {
        return lookup(".link") == null ? this : lookup(".link");
    }

    void show() {
        List<Block> blocks = model.findings().startBlockedBy();
        boolean closed = !blocks.isEmpty();
        getStyleClass().remove("closed");
        if (closed) {
            getStyleClass().add("closed");
        }
        getChildren().setAll(head(closed), Labels.whole(words(blocks.size()), "caption"));
        blocks.forEach(block -> getChildren().add(row(block)));
        if (!model.findings().leftOff().isEmpty()) {
            getChildren().add(Labels.whole("Left off on purpose", "caption"));
            model.findings().leftOff().forEach(left -> getChildren().add(Labels.wrapped(left)));
            getChildren().add(Labels.wrapped(LAW, "caption"));
        }
    }

    private static Node head(boolean closed) {
        HBox head = new HBox(
                8,
                Mark.POSTS.node(),
                Labels.whole("Start gate", "section"),
                closed ? Labels.whole("closed", "tag", "stop") : Labels.whole("open", "tag"));
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private static String words(int blocks) {
        return switch (blocks) {
            case 0 -> "Nothing stands in the way of a start.";
            case 1 -> "1 thing stands in the way";
            default -> blocks + " things stand in the way";
        };
    }

    private Node row(Block block) {
        Label what = Labels.wrapped(block.what());
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(8, what);
        block.step().ifPresent(step -> line.getChildren().add(Labels.whole("step " + step, "caption")));
        line.setAlignment(Pos.CENTER_LEFT);
        VBox row = new VBox(line);
        row.getStyleClass().add("row");
        block.part().ifPresent(part -> line.getChildren().add(1, leave(part, row)));
        return row;
    }

    private Button leave(String part, VBox row) {
        Button leave = new Button("leave off");
        leave.getStyleClass().add("link");
        leave.setMinWidth(Region.USE_PREF_SIZE);
        leave.setAccessibleText("Leave off on purpose: " + part);
        leave.setOnAction(pressed -> ask(part, row));
        return leave;
    }

    private void ask(String part, VBox row) {
        CheckedField<String> reason = new CheckedField<>("Why " + part + " stays off", text -> text);
        reason.field().setPromptText("why it stays off; the reason stands in the report");
        reason.onTaken(why -> model.leaveOff(part, why, reason::refuse));
        row.getChildren().setAll(row.getChildren().get(0), reason);
        reason.field().requestFocus();
    }
}
