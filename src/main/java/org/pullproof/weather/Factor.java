package org.pullproof.weather;

/**
 * What measured power is multiplied by.
 *
 * @param standard whose factor it is
 * @param value the factor, about 1
 * @param uncertainty half width that the resolution of the readings leaves, same unit
 * @param withinRange whether air and factor lie in the range the standard is made for
 */
public record Factor(Standard standard, double value, double uncertainty, boolean withinRange) {}
