package org.pullproof.advice;

import org.pullproof.dyno.RunList;
import org.pullproof.dyno.StartWindow;

/**
 * How the last dyno day stands.
 *
 * @param gate before its first pull
 * @param start with what its next pull may begin
 * @param runs its pulls, driven and to come
 */
public record DayStanding(LoadGate gate, StartWindow start, RunList runs) {}
