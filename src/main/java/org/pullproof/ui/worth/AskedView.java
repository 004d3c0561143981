package org.pullproof.ui.worth;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.car.FactWords;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Typed;

/** What only the owner can say, asked once; until it is told, what is taken for it stands in the field. */
final class AskedView extends VBox {
    private final WorthViewModel model;
    private final FlowPane columns = new FlowPane();
    private final Map<Fact, CheckedField<String>> fields = new EnumMap<>(Fact.class);

    AskedView(WorthViewModel model) {
        this.model = model;
        getStyleClass().add("asked");
        columns.getStyleClass().add("entry-columns");
        getChildren()
                .setAll(
                        Labels.section("What only you can say", "until told, the figure in grey counts (judgement)"),
                        columns);
    }

    void show() {
        if (!fields.keySet().equals(java.util.Set.copyOf(model.asked()))) {
            fields.clear();
            columns.getChildren().setAll(model.asked().stream().map(this::field).toList());
        }
        fields.forEach((fact, field) -> {
            field.field().setPromptText(model.untilTold(fact));
            if (!field.isChanged() && !field.isRefused()) {
                field.show(model.model().session().car().told(fact).orElse(""));
            }
        });
    }

    private VBox field(Fact fact) {
        CheckedField<String> field = new CheckedField<>(fact.words(), text -> read(fact, text));
        field.getStyleClass().add("fact-field");
        field.readsAtRest(told -> FactWords.of(fact, told));
        field.onTaken(text -> tell(fact, text));
        field.onForgotten(() -> tell(fact, ""));
        field.field().setId("asked-" + fact.key());
        field.field().setPrefColumnCount(11);
        fields.put(fact, field);
        Label caption = Labels.whole(fact.words(), "caption");
        return new VBox(caption, field);
    }

    /** By the same rules as everywhere; bare money takes the currency of the sheet. */
    private String read(Fact fact, String typed) {
        return Car.named("this car")
                .with(fact, model.withCurrency(fact, Typed.money(typed)))
                .told(fact)
                .orElseThrow();
    }

    private void tell(Fact fact, String text) {
        model.tell(fact, text, why -> {
            CheckedField<String> field = fields.get(fact);
            if (field != null) {
                field.refuse(why);
            }
        });
    }
}
