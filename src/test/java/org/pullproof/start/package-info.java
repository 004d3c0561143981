/**
 * How long the window takes to come, beside a bare JavaFX window. Begin with {@link org.pullproof.start.StartTimes}; what it last
 * said is in {@code docs/performance.md}. {@link org.pullproof.start.Walk} goes once through every sheet, for the proof that
 * nothing is asked of a network.
 */
@NullMarked
package org.pullproof.start;

import org.jspecify.annotations.NullMarked;
