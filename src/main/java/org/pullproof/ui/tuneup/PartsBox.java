package org.pullproof.ui.tuneup;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.tuneup.PartFinding;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.Labels;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;

/** What the planned steps use up: to buy, bought or kept, with price, note and age. */
final class PartsBox extends VBox {
    private static final double PRICE = 84;

    private final BenchViewModel bench;
    private final Label total = Labels.wrapped("", "caption");
    private final VBox rows = new VBox();
    private final Map<String, Row> known = new HashMap<>();

    PartsBox(BenchViewModel bench) {
        super(4);
        this.bench = bench;
        getChildren().setAll(Labels.section("Parts", "no makers: what fits is in the note"), total, rows);
    }

    void show() {
        List<PartFinding> parts = bench.findings().parts();
        total.setText(bench.findings()
                .toBuy()
                .total()
                .map(cost -> "Still to buy: about " + Figures.money(cost)
                        + ". Prices are judgement until you type yours; what is bought stands in the money spent.")
                .orElse("Nothing is left to buy. What was paid stands in the money spent."));
        known.keySet().retainAll(parts.stream().map(PartFinding::part).toList());
        KeptRows.show(rows, parts.stream().map(this::row).toList());
    }

    private Row row(PartFinding part) {
        Row row = known.computeIfAbsent(part.part(), name -> new Row(part));
        row.show(part);
        return row;
    }

    /** "15 USD": a price of the trade has no cents. */
    private static String plain(Money price) {
        return new Money(new BigDecimal(price.amount().stripTrailingZeros().toPlainString()), price.currency())
                .toString();
    }

    /** One part. */
    private final class Row extends VBox {
        private final CheckedField<Money> price;
        private final Choice<Fate> fate;
        private final CheckedField<String> note;
        private final CheckedField<String> since;
        private final Label age = Labels.wrapped("", "caption");
        private PartFinding part;
        private Optional<Boolean> shown = Optional.empty();

        Row(PartFinding first) {
            super(3);
            part = first;
            getStyleClass().add("row");
            Label name = Labels.wrapped(first.part(), "strong");
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            fate = new Choice<>(first.part(), List.of(Fate.values()), Fate::words);
            fate.onChosen(chosen -> bench.fate(part, chosen, this::refused));
            price = new CheckedField<>("Price of " + first.part(), bench::money);
            price.setPrefWidth(PRICE);
            price.setMaxWidth(PRICE);
            price.onTaken(typed -> bench.price(part, typed, price::refuse));
            note = new CheckedField<>("Note on " + first.part(), text -> text);
            note.field().setPromptText("which one fits, where from");
            note.onTaken(words -> bench.partNote(part, words, note::refuse));
            note.onForgotten(() -> bench.partNote(part, "", note::refuse));
            since = new CheckedField<>("Since when " + first.part() + " is on the car", text -> text);
            since.field().setPromptText("on the car since 2021-05-03, or 61000mi");
            since.onTaken(typed -> bench.keptSince(part, typed, since::refuse));
            HBox.setHgrow(note, Priority.ALWAYS);
            HBox.setHgrow(since, Priority.ALWAYS);
            HBox head = new HBox(8, name, fate);
            head.setAlignment(Pos.CENTER_LEFT);
            getChildren().setAll(head);
        }

        private void refused(String why) {
            price.refuse(why);
        }

        void show(PartFinding now) {
            part = now;
            Optional<Fate> told = now.told().map(PartRecord::fate);
            fate.show(told.or(() -> now.needed() ? Optional.of(Fate.TO_BUY) : Optional.empty()));
            boolean kept = told.equals(Optional.of(Fate.KEPT));
            if (!shown.equals(Optional.of(kept))) {
                shown = Optional.of(kept);
                HBox second = kept ? new HBox(8, since, age) : new HBox(8, price, note);
                second.setAlignment(Pos.CENTER_LEFT);
                getChildren().setAll(getChildren().get(0), second);
            }
            age.setText(now.age().orElse(""));
            show(price, now.price().map(PartsBox::plain).orElse(""));
            show(note, now.told().map(PartRecord::note).orElse(""));
        }

        private static void show(CheckedField<?> field, String text) {
            if (!field.isChanged() && !field.isRefused()) {
                field.show(text);
            }
        }
    }
}
