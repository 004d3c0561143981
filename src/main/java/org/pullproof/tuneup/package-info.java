/**
 * The tune-up: steps in order, what is off the car, plugs, and the start gate. Start with {@link
 * org.pullproof.tuneup.StepGraph}.
 */
@NullMarked
package org.pullproof.tuneup;

import org.jspecify.annotations.NullMarked;
