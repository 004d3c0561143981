package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;

/** Names rows that are left out: the first ones each, the rest together. */
final class RowProblems {
    private static final int NAMED = 20;

    private final List<ImportProblem> named = new ArrayList<>();
    private int more;
    private int lastLine;

    void leftOut(int line, String column, String why) {
        add(new ImportProblem(line, column, why + "; the row is left out."));
    }

    void add(ImportProblem problem) {
        if (named.size() < NAMED) {
            named.add(problem);
        } else {
            more++;
            lastLine = problem.line();
        }
    }

    List<ImportProblem> all() {
        List<ImportProblem> all = new ArrayList<>(named);
        if (more > 0) {
            all.add(new ImportProblem(lastLine, "", more + " rows more are left out likewise, up to this line."));
        }
        return all;
    }
}
