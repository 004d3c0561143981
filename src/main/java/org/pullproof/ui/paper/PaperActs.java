package org.pullproof.ui.paper;

import java.util.Set;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;

/** What the page of what can be printed does; each of the three asks where to. */
public interface PaperActs {
    /**
     * Saves the report.
     *
     * @param parts at least one
     */
    void report(Set<ReportPart> parts);

    /** Saves the plan of the dyno day, for the operator. */
    void dayPlan();

    /** Saves the run card of the tune-up. */
    void runCard();

    /** Prints on that paper from now on. */
    void liked(Paper paper);
}
