/**
 * What a session goes through: kills, files that are not what they seem, hostile text, disks that fail. Begin with {@link
 * org.pullproof.robustness.Trials}, which tries by the thousand; the tests try a few in every build. {@code docs/robustness.md}
 * holds the outcome.
 */
@NullMarked
package org.pullproof.robustness;

import org.jspecify.annotations.NullMarked;
