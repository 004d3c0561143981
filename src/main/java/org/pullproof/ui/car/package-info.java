/** The sheet Car: what the engine is, what may be done to it, what the owner wishes. */
@NullMarked
package org.pullproof.ui.car;

import org.jspecify.annotations.NullMarked;
