package org.pullproof.ui.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.engine.Crossfire;
import org.pullproof.engine.EngineProfile;
import org.pullproof.tuneup.WireRecord;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.QuantityField;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** The plug wires: those to part on the engine plan, the cap read around, each wire's resistance, length and route. */
final class WireRows extends VBox {
    private static final double PLAN = 236;
    private static final double FIELD = 84;
    private static final double ROUTE = 128;

    private final TuneUpViewModel model;
    private final DrawingView plan = new DrawingView();
    private final CheckedField<List<Integer>> cap =
            new CheckedField<>("Cylinders around the cap", TuneUpViewModel::readCap);
    private final VBox remarks = new VBox(2);
    private final GridPane grid = new GridPane();
    private final List<Row> rows = new ArrayList<>();

    WireRows(TuneUpViewModel model) {
        super(4);
        this.model = model;
        plan.setMinHeight(PLAN);
        plan.setPrefHeight(PLAN);
        grid.setHgap(8);
        grid.setVgap(3);
        cap.field().setId("cap-order");
        cap.field().setPromptText("around the cap as the rotor turns: 1 3 4 2");
        cap.onTaken(read -> model.recordCap(read, cap::refuse));
        cap.onForgotten(() -> model.recordCap(List.of(), cap::refuse));
    }

    void show() {
        getChildren().clear();
        if (!model.hasWires()) {
            return;
        }
        getChildren().setAll(Labels.section("Wires", "parted where the plan says so"), plan);
        if (model.hasCap()) {
            getChildren().add(cap);
            if (!cap.isChanged() && !cap.isRefused()) {
                cap.show(model.cap());
            }
        }
        getChildren().addAll(remarks, grid);
        showPlan(model.model().session().profile());
        showRemarks();
        showRows();
    }

    private void showPlan(EngineProfile profile) {
        List<EnginePlan.Pair> apart = Crossfire.pairs(profile).stream()
                .map(pair -> new EnginePlan.Pair(pair.first(), pair.second()))
                .toList();
        Set<Integer> off = model.wiresOff();
        plan.show((width, height) -> model.hasCap()
                ? EnginePlan.wired(profile, apart, off, width, height)
                : EnginePlan.of(profile, apart, width, height));
    }

    private void showRemarks() {
        remarks.getChildren()
                .setAll(model.findings().wireRemarks().stream()
                        .map(words -> Labels.wrapped(words, "caption", "red"))
                        .toList());
    }

    private void showRows() {
        List<WireRecord> wires = model.wires();
        if (rows.size() != wires.size()) {
            build(wires.size());
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(wires.get(i));
        }
    }

    private void build(int cylinders) {
        rows.clear();
        grid.getChildren().clear();
        grid.addRow(0, caption(""), caption("end to end, kΩ"), caption("length, cm"), caption("route"));
        for (int cylinder = 1; cylinder <= cylinders; cylinder++) {
            Row row = new Row(cylinder);
            rows.add(row);
            grid.addRow(cylinder, row.nodes());
        }
    }

    private static Label caption(String words) {
        return Labels.whole(words, "caption");
    }

    /** The fields of one wire. */
    private final class Row {
        private final int cylinder;
        private final QuantityField resistance;
        private final QuantityField length;
        private final CheckedField<String> route;

        Row(int cylinder) {
            this.cylinder = cylinder;
            this.resistance = new QuantityField("Wire " + cylinder + ", resistance end to end", Unit.KOHM);
            this.length = new QuantityField("Wire " + cylinder + ", length", Unit.CM);
            this.route = new CheckedField<>("Wire " + cylinder + ", route", text -> text);
            for (CheckedField<?> field : List.of(resistance, length, route)) {
                field.setPrefWidth(field == route ? ROUTE : FIELD);
                field.setMaxWidth(field == route ? ROUTE : FIELD);
                keeps(field);
            }
        }

        private void keeps(CheckedField<?> field) {
            field.onTaken(taken -> keep(field));
            field.onForgotten(() -> keep(field));
        }

        private void keep(CheckedField<?> typed) {
            model.record(
                    new WireRecord(
                            cylinder,
                            resistance.value(),
                            length.value(),
                            route.value().orElse("")),
                    typed::refuse);
        }

        void show(WireRecord wire) {
            show(resistance, wire.resistance());
            show(length, wire.length());
            if (!route.isChanged() && !route.isRefused()) {
                route.show(wire.route());
            }
        }

        private static void show(QuantityField field, Optional<Quantity> known) {
            if (!field.isChanged() && !field.isRefused()) {
                field.show(known.map(Quantity::toString).orElse(""));
            }
        }

        Node[] nodes() {
            return new Node[] {Labels.whole(String.valueOf(cylinder), "strong"), resistance, length, route};
        }
    }
}
