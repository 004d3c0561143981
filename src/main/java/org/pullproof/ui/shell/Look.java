package org.pullproof.ui.shell;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** How the window shows things: paper or night, US or metric. */
public final class Look {
    private final BooleanProperty night = new SimpleBooleanProperty();
    private final ObjectProperty<UnitSystem> units;

    public Look(UnitSystem units, boolean night) {
        this.units = new SimpleObjectProperty<>(units);
        this.night.set(night);
    }

    public BooleanProperty nightProperty() {
        return night;
    }

    public ObjectProperty<UnitSystem> unitsProperty() {
        return units;
    }

    public Figures figures() {
        return new Figures(units.get());
    }

    public void otherLight() {
        night.set(!night.get());
    }

    public void otherUnits() {
        units.set(units.get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
    }
}
