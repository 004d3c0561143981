package org.pullproof.ui.health;

import java.util.List;
import javafx.scene.input.KeyCode;

/** Which cylinder an arrow key leads to, by place on the plan. */
final class Neighbours {
    private Neighbours() {}

    /** The neighbour, or the cylinder itself where there is none. */
    static int of(List<List<Integer>> rows, int cylinder, KeyCode arrow) {
        int row = row(rows, cylinder);
        int place = rows.get(row).indexOf(cylinder);
        return switch (arrow) {
            case LEFT -> at(rows.get(row), place - 1);
            case RIGHT -> at(rows.get(row), place + 1);
            case UP -> at(rows.get(Math.max(0, row - 1)), place);
            case DOWN -> at(rows.get(Math.min(rows.size() - 1, row + 1)), place);
            default -> cylinder;
        };
    }

    private static int row(List<List<Integer>> rows, int cylinder) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).contains(cylinder)) {
                return i;
            }
        }
        throw new IllegalArgumentException("Cylinder " + cylinder + " stands in no row");
    }

    private static int at(List<Integer> row, int place) {
        return row.get(Math.max(0, Math.min(row.size() - 1, place)));
    }
}
