package org.pullproof.ui.dynoday;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pullproof.drawing.ChartLook;
import org.pullproof.drawing.ChartPanels;
import org.pullproof.drawing.PowerChart;
import org.pullproof.drawing.Speeds;
import org.pullproof.dyno.Role;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.weather.Factor;

/** How the curves are looked at: which speeds, what besides power, and where the crosshair stands. */
public final class ChartViewModel {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);
    private static final double ZOOM_STEP = 0.5;

    private final DynoDayViewModel day;
    private final Set<Role> further = EnumSet.noneOf(Role.class);
    private final ReadOnlyObjectWrapper<ChartPanels> panels;
    private final ReadOnlyObjectWrapper<Optional<Integer>> crosshair = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Speeds> zoom = Optional.empty();

    public ChartViewModel(DynoDayViewModel day) {
        this.day = day;
        this.panels = new ReadOnlyObjectWrapper<>(computed());
    }

    /** Computes the panels anew, because pulls, units or the setup looked at are others. */
    public void refresh() {
        further.retainAll(logged());
        panels.set(computed());
    }

    private ChartPanels computed() {
        return ChartPanels.of(day.chart(), new ChartLook(zoom, List.copyOf(further), List.of()));
    }

    /** What is drawn. */
    public ReadOnlyObjectProperty<ChartPanels> panelsProperty() {
        return panels.getReadOnlyProperty();
    }

    /** The speed of the crosshair, rpm; empty without one. */
    public ReadOnlyObjectProperty<Optional<Integer>> crosshairProperty() {
        return crosshair.getReadOnlyProperty();
    }

    /** What may be shown besides power. */
    public List<Role> logged() {
        return ChartPanels.logged(day.chart());
    }

    public boolean shows(Role role) {
        return further.contains(role);
    }

    /** Shows a panel of what was logged, or no longer. */
    public void toggle(Role role) {
        if (!further.remove(role)) {
            further.add(role);
        }
        panels.set(computed());
    }

    /** Puts the crosshair on the speed pointed at; none beside the panels. */
    public void point(OptionalInt rpm) {
        crosshair.set(rpm.isPresent() ? Optional.of(rpm.getAsInt()) : Optional.empty());
    }

    /** Moves the crosshair, from the middle if there is none, and not out of sight. */
    public void move(int rpm) {
        if (panels.get().isEmpty()) {
            return;
        }
        Speeds seen = panels.get().speeds();
        int from = crosshair.get().orElse(middle(seen));
        crosshair.set(Optional.of(Math.max(seen.fromRpm(), Math.min(seen.toRpm(), from + rpm))));
    }

    private static int middle(Speeds seen) {
        return (seen.fromRpm() + seen.width() / 2) / 20 * 20;
    }

    public void zoomIn() {
        scale(ZOOM_STEP, crosshair.get());
    }

    public void zoomOut() {
        scale(1 / ZOOM_STEP, crosshair.get());
    }

    /** Wider or narrower about a speed, in the middle if there is none. */
    public void scale(double factor, Optional<Integer> about) {
        if (panels.get().isEmpty()) {
            return;
        }
        Speeds seen = panels.get().speeds();
        look(Optional.of(seen.scaled(about.filter(seen::holds).orElse(middle(seen)), factor, whole())));
    }

    private Speeds whole() {
        return ChartPanels.of(day.chart(), ChartLook.whole()).speeds();
    }

    /** Shows these speeds only. */
    public void zoomTo(Speeds wanted) {
        look(Optional.of(wanted));
    }

    /** Shows every speed. */
    public void zoomAll() {
        look(Optional.empty());
    }

    private void look(Optional<Speeds> wanted) {
        zoom = wanted.filter(speeds -> !speeds.equals(whole()));
        panels.set(computed());
    }

    public boolean isZoomed() {
        return zoom.isPresent();
    }

    /** The panels as they are looked at, with a head that lets the picture stand alone: car, standard, air and day. */
    public ChartPanels exported() {
        PowerChart.Content seen = day.chart();
        PowerChart.Content plain = new PowerChart.Content(
                seen.findings(),
                seen.setups(),
                Optional.empty(),
                seen.ribbonPercent(),
                seen.standard(),
                seen.figures());
        return ChartPanels.of(plain, new ChartLook(zoom, List.copyOf(further), head()));
    }

    private List<String> head() {
        SessionViewModel model = day.model();
        List<String> head = new ArrayList<>();
        head.add(model.session().car().name() + ", power at the wheels");
        String made = day.rows().stream()
                .map(row -> row.pull().pull().time().format(DAY))
                .reduce((first, last) -> last)
                .map(last -> " · last pull " + last)
                .orElse("");
        String factor = model.appraisal()
                .dyno()
                .latestFactor()
                .map(ChartViewModel::words)
                .orElse("not corrected, no air was read");
        Figures figures = model.appraisal().figures();
        String air = day.air()
                .latest()
                .map(read -> read.state().words(figures) + " → ")
                .orElse("");
        head.add(air + factor + made);
        return head;
    }

    private static String words(Factor factor) {
        return Figures.number(factor.value(), 4) + " ± " + Figures.number(factor.uncertainty(), 4) + " "
                + factor.standard().words();
    }
}
