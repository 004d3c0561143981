/**
 * Which test is worth doing next: what its outcomes would tell, and what that is worth to the decision, in money. Start with
 * {@link org.pullproof.health.nexttest.TestAdvisor}. The chances come from {@code health.faults}.
 */
@org.jspecify.annotations.NullMarked
package org.pullproof.health.nexttest;
