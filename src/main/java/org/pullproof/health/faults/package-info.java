/**
 * Which fault the readings speak of, and how sure: one hole of unknown size in a cylinder (or a weak spark, or a valve that does not
 * open) must explain leak-down, compression and balance together, jointly over cylinders, pairs and states of the engine. Start with
 * {@link org.pullproof.health.faults.FaultModel}. How a session's readings are chosen, and what is said of the answer, stands in
 * {@code health}.
 */
@org.jspecify.annotations.NullMarked
package org.pullproof.health.faults;
