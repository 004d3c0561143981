/**
 * Readings of the engine's health and what they amount to. Start with {@link org.pullproof.health.Reading} for what was
 * measured and {@link org.pullproof.health.HealthFindings} for the answer.
 */
@NullMarked
package org.pullproof.health;

import org.jspecify.annotations.NullMarked;
