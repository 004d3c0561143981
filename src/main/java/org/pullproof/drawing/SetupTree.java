package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;

/** The setups as a tree: each stands below the one it was made from, with the call of that step; the present one is filled. */
public final class SetupTree {
    /** Height of one setup, px. */
    public static final double ROW = 20;

    private static final double TOP = 14;
    private static final double INDENT = 18;
    private static final double LEFT = 8;
    private static final double DOT = 4;

    private final List<Setup> setups;
    private final List<Change> changes;
    private final String present;
    private final ChangeLedger ledger;
    private final Pen pen = new Pen();
    private int row;

    private SetupTree(List<Setup> setups, List<Change> changes, String present, ChangeLedger ledger) {
        this.setups = List.copyOf(setups);
        this.changes = List.copyOf(changes);
        this.present = present;
        this.ledger = ledger;
    }

    /** Returns the picture; it is as high as there are setups. */
    public static Drawing of(
            List<Setup> setups, List<Change> changes, String present, ChangeLedger ledger, double width) {
        return new SetupTree(setups, changes, present, ledger).draw(width);
    }

    private Drawing draw(double width) {
        for (Setup setup : setups) {
            if (madeFrom(setup) < 0) {
                branch(setup, 0, 0);
            }
        }
        return pen.picture(width, TOP + row * ROW, "Setups, each below the one it was made from");
    }

    /** Draws a setup and all that was made from it. */
    private void branch(Setup setup, int depth, double parentY) {
        double x = LEFT + depth * INDENT;
        double y = TOP + row * ROW;
        row++;
        if (depth > 0) {
            Stroke stem = Stroke.of(Ink.RULE2, 1);
            pen.line(x - INDENT, parentY + DOT, x - INDENT, y, stem).line(x - INDENT, y, x - DOT, y, stem);
        }
        dot(setup, x, y);
        words(setup, x + 10, y + 4);
        for (Setup child : childrenOf(setup)) {
            branch(child, depth + 1, y);
        }
    }

    private void dot(Setup setup, double x, double y) {
        if (setup.id().equals(present)) {
            pen.disc(x, y, DOT, Ink.BLUE);
        } else {
            pen.ring(x, y, DOT, Stroke.of(Ink.INK, 1.2), Ink.SHEET);
        }
    }

    private void words(Setup setup, double x, double y) {
        boolean now = setup.id().equals(present);
        Lettering as = now ? Lettering.STRONG.in(Ink.BLUE) : Lettering.STRONG;
        pen.text(setup.name(), x, y, Anchor.START, as);
        String more = (now ? "the engine is in it now" : "") + call(setup, now);
        pen.text(more, x + as.widthOf(setup.name()) + 8, y, Anchor.START, Lettering.SECOND);
    }

    /** The call of the step that made it, with its figure. */
    private String call(Setup setup, boolean follows) {
        return ledger.changes().stream()
                .filter(judged -> judged.recorded() && judged.to().equals(setup.id()))
                .findFirst()
                .map(judged -> (follows ? "; " : "") + figure(judged) + ", "
                        + judged.call().words())
                .orElse("");
    }

    private static String figure(JudgedChange judged) {
        return Figures.signedPercent(judged.differencePercent(), 1);
    }

    private List<Setup> childrenOf(Setup parent) {
        List<Setup> children = new ArrayList<>();
        for (Setup setup : setups) {
            int from = madeFrom(setup);
            if (from >= 0 && setups.get(from).equals(parent)) {
                children.add(setup);
            }
        }
        return children;
    }

    /** Place of the setup it was made from, which stands before it; −1 for a beginning. */
    private int madeFrom(Setup setup) {
        int own = setups.indexOf(setup);
        return changes.stream()
                .filter(change -> change.to().equals(setup.id()))
                .mapToInt(change -> place(change.from()))
                .filter(from -> from >= 0 && from < own)
                .findFirst()
                .orElse(-1);
    }

    private int place(String id) {
        for (int i = 0; i < setups.size(); i++) {
            if (setups.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}
