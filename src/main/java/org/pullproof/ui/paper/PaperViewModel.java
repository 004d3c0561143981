package org.pullproof.ui.paper;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;

/** State and decisions of the page of what can be printed. */
public final class PaperViewModel {
    private static final String NONE = "Tick at least one part: a report of nothing says nothing.";

    private final PaperActs acts;
    private final ReadOnlyObjectWrapper<Set<ReportPart>> parts = new ReadOnlyObjectWrapper<>(ReportPart.all());
    private final ReadOnlyObjectWrapper<Paper> paper;
    private final ReadOnlyStringWrapper answer = new ReadOnlyStringWrapper();

    /**
     * @param paper printed on so far
     */
    public PaperViewModel(PaperActs acts, Paper paper) {
        this.acts = acts;
        this.paper = new ReadOnlyObjectWrapper<>(paper);
        say();
    }

    /** Takes a part in or leaves it out. */
    public void want(ReportPart part, boolean wanted) {
        Set<ReportPart> next = copy(parts.get());
        if (wanted) {
            next.add(part);
        } else {
            next.remove(part);
        }
        want(next);
    }

    /** Wants these parts and no others. */
    public void want(Set<ReportPart> wanted) {
        parts.set(Set.copyOf(wanted));
        say();
    }

    /** Every part. */
    public void wantAll() {
        want(ReportPart.all());
    }

    /** What a buyer is shown: nothing of money, plans and changes. */
    public void wantHealthSheet() {
        want(EnumSet.of(ReportPart.HEALTH));
    }

    private static Set<ReportPart> copy(Collection<ReportPart> parts) {
        return parts.isEmpty() ? EnumSet.noneOf(ReportPart.class) : EnumSet.copyOf(parts);
    }

    private void say() {
        answer.set(
                parts.get().isEmpty()
                        ? NONE
                        : "Cautions, methods and standards go with every part. The health sheet alone says nothing of money.");
    }

    /** Prints on that paper from now on. */
    public void choose(Paper chosen) {
        paper.set(chosen);
        acts.liked(chosen);
    }

    /** Saves the report of the parts wanted; of none there is nothing to save, and {@link #answerProperty()} says so. */
    public void saveReport() {
        if (!parts.get().isEmpty()) {
            acts.report(parts.get());
        }
    }

    public void saveDayPlan() {
        acts.dayPlan();
    }

    public void saveRunCard() {
        acts.runCard();
    }

    public ReadOnlyObjectProperty<Set<ReportPart>> partsProperty() {
        return parts.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Paper> paperProperty() {
        return paper.getReadOnlyProperty();
    }

    /** One sentence above the parts. */
    public ReadOnlyStringProperty answerProperty() {
        return answer.getReadOnlyProperty();
    }
}
