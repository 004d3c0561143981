/**
 * From a table of figures to pulls, curves and band power. Start with {@link org.pullproof.dyno.Pull}. A pull names its
 * setup by id; changes are unknown here.
 */
@NullMarked
package org.pullproof.dyno;

import org.jspecify.annotations.NullMarked;
