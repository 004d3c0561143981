package org.pullproof.changes;

import java.time.LocalDateTime;
import java.util.Optional;
import org.pullproof.units.Money;

/**
 * A step from one setup to another, as recorded. Going back is a change whose target is an earlier setup.
 *
 * @param from id of the setup it was made from
 * @param to id of the setup it led to
 * @param what what was done, in words
 * @param time when
 * @param cost what it cost, if known
 */
public record Change(String from, String to, String what, LocalDateTime time, Optional<Money> cost) {}
