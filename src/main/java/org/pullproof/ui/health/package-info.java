/**
 * The sheet Health: the engine's tiles, readings typed in place, rules and the whole engine. Start with {@link org.pullproof.ui.health.HealthSheet}.
 */
@NullMarked
package org.pullproof.ui.health;

import org.jspecify.annotations.NullMarked;
