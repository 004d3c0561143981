/**
 * The air of a day and the correction standards made from it. Start with {@link org.pullproof.weather.AirReading} for
 * what was typed and {@link org.pullproof.weather.AirState} for what follows.
 */
@NullMarked
package org.pullproof.weather;

import org.jspecify.annotations.NullMarked;
