package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pullproof.app.ForeignTable;
import org.pullproof.app.ForeignTable.Preview;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Role;
import org.pullproof.units.Dimension;
import org.pullproof.units.Unit;

/**
 * A foreign table whose columns a person tells in three clicks: which is engine speed, which is power or torque, and in what unit,
 * which also says whether it is power or torque. The outcome is shown at each click.
 */
public final class MappingViewModel {
    private final ForeignTable table;
    private final List<Path> files;
    private Optional<String> speed;
    private Optional<String> value = Optional.empty();
    private Optional<Unit> unit = Optional.empty();
    private final ReadOnlyObjectWrapper<Preview> preview;

    MappingViewModel(ForeignTable table, List<Path> files) {
        this.table = table;
        this.files = List.copyOf(files);
        this.speed = table.look().speed();
        this.preview = new ReadOnlyObjectWrapper<>(looked());
    }

    public ForeignTable table() {
        return table;
    }

    List<Path> files() {
        return files;
    }

    /** The headers to choose from; those without words cannot be told. */
    public List<String> headers() {
        return table.look().headers().stream()
                .filter(header -> !header.isBlank())
                .toList();
    }

    /** Units of power, then of torque. */
    public static List<Unit> units() {
        return Stream.concat(Unit.of(Dimension.POWER).stream(), Unit.of(Dimension.TORQUE).stream())
                .toList();
    }

    public Optional<String> speed() {
        return speed;
    }

    public void chooseSpeed(String header) {
        speed = Optional.of(header);
        preview.set(looked());
    }

    public void chooseValue(String header) {
        value = Optional.of(header);
        preview.set(looked());
    }

    public void chooseUnit(Unit chosen) {
        unit = Optional.of(chosen);
        preview.set(looked());
    }

    /** What is told so far. */
    public List<ColumnChoice> columns() {
        List<ColumnChoice> columns = new ArrayList<>();
        speed.ifPresent(header -> columns.add(new ColumnChoice(Role.RPM, header, Optional.of(Unit.RPM))));
        if (value.isPresent() && unit.isPresent()) {
            Role role = unit.get().dimension() == Dimension.POWER ? Role.POWER : Role.TORQUE;
            columns.add(new ColumnChoice(role, value.get(), unit));
        }
        return columns;
    }

    private Preview looked() {
        if (speed.isPresent() && value.isPresent() && unit.isPresent()) {
            return table.preview(columns());
        }
        return new Preview(List.of(), Optional.of(stillAsked()), true);
    }

    private String stillAsked() {
        if (speed.isEmpty()) {
            return "Say which column is the engine speed, in rpm.";
        }
        return value.isEmpty() ? "Say which column is power or torque." : "Say its unit.";
    }

    /** What would come of what is told so far. */
    public ReadOnlyObjectProperty<Preview> previewProperty() {
        return preview.getReadOnlyProperty();
    }

    /** Whether it can be taken in as told. */
    public boolean ready() {
        return preview.get().problem().isEmpty();
    }
}
