/**
 * A disk that forgets, when the power goes, what it was not told to put down: its file system is {@link
 * org.pullproof.robustness.cut.ForgetfulDisk}, what it holds {@link org.pullproof.robustness.cut.Platter}. Only for tests.
 */
@NullMarked
package org.pullproof.robustness.cut;

import org.jspecify.annotations.NullMarked;
