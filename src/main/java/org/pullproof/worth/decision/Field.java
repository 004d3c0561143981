package org.pullproof.worth.decision;

import java.util.List;
import java.util.stream.IntStream;

/**
 * All options followed through every draw.
 *
 * @param weighed the question weighed
 * @param realised what each option comes to, in the order of the problem
 * @param contest the options draw by draw against each other
 */
record Field(Weighed weighed, List<Realised> realised, Contest contest) {
    static Field of(Weighed weighed) {
        List<Realised> realised = IntStream.range(0, weighed.options())
                .mapToObj(a -> new Realised(weighed, a))
                .toList();
        return new Field(weighed, realised, new Contest(realised, weighed.chances()));
    }
}
