package org.pullproof.dyno;

import org.pullproof.units.Unit;

/**
 * Which column has a role, where a person said so.
 *
 * @param role what the column tells
 * @param header the column's header as it stands in the file
 * @param unit the unit of its figures
 */
public record ColumnChoice(Role role, String header, Unit unit) {}
