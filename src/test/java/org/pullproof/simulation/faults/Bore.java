package org.pullproof.simulation.faults;

import java.util.Optional;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.Fault;

/**
 * The truth of one cylinder.
 *
 * @param fault what is wrong, {@code SOUND} if nothing
 * @param ringMm2 leak past the rings
 * @param holeMm2 hole besides
 * @param path where the hole leads
 * @param filling share of the charge that comes in
 * @param idle share it gives at idle
 */
record Bore(Fault fault, double ringMm2, double holeMm2, Optional<AirPlace> path, double filling, double idle) {}
