/**
 * What one hole in a cylinder does: to the gauge while cranked, to a leak-down tester at rest. Start with
 * {@link org.pullproof.health.hole.CrankedCylinder}. Chances are weighed in {@code health.faults}.
 */
@org.jspecify.annotations.NullMarked
package org.pullproof.health.hole;
