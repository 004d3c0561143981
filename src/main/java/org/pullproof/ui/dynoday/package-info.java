/**
 * The sheet Dyno day: the air, pull files taken in, the pulls and their chart. Start with {@link org.pullproof.ui.dynoday.DynoDaySheet}.
 */
@NullMarked
package org.pullproof.ui.dynoday;

import org.jspecify.annotations.NullMarked;
