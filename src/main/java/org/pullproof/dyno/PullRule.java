package org.pullproof.dyno;

import java.util.stream.Stream;

/** Something that is minded about a pull. */
@FunctionalInterface
interface PullRule {
    /** Sentences, each beginning with the flag's keyword; none if there is nothing to mind or nothing was logged to tell it by. */
    Stream<String> flags(Judged pull, Company company);
}
