package org.pullproof.health.faults;

import java.util.OptionalDouble;
import org.pullproof.health.hole.GaugeTest;

/**
 * One reading of a compression gauge.
 *
 * @param pascal over the surroundings, Pa
 * @param stepPascal resolution of the gauge, Pa
 * @param oilCm3 oil put in before, cm³; meant for wet readings
 * @param how it was made
 */
public record Gauge(double pascal, OptionalDouble stepPascal, OptionalDouble oilCm3, GaugeTest how) {}
