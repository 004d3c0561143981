package org.pullproof.testing;

import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.FileTime;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.Trace;

/** Tables of one pull, for those who read no file. */
public final class OnePull {
    private OnePull() {}

    /** A pull from 2,000 to 3,000 rpm with the same power all the way, W. */
    public static PullTable of(double watt) {
        Trace trace = Trace.of(new double[] {2000, 3000}, new double[] {watt, watt});
        return new PullTable(List.of(trace), new FileTime(Optional.empty(), Optional.empty()), List.of());
    }
}
