/**
 * What surrounds the engine: identity, access, price, place, and what the owner wishes. Start with {@link
 * org.pullproof.car.Car}.
 */
@NullMarked
package org.pullproof.car;

import org.jspecify.annotations.NullMarked;
