/** Air through a restrictor and a leak. Start with {@link org.pullproof.health.leakdown.LeakTester}. */
@NullMarked
package org.pullproof.health.leakdown;

import org.jspecify.annotations.NullMarked;
