package org.pullproof.changes;

/**
 * One pull as the fit sees it.
 *
 * @param day number of its day among the days with pulls, from 0
 * @param clock its place in that day, from 1; pulls that do not count keep theirs
 * @param block number of its unbroken run of pulls on one setup, counted over all pulls
 * @param setting number of its setup, from 0
 * @param y 100·ln(power): a difference of 1 is about 1 %
 */
record Observation(int day, double clock, int block, int setting, double y) {}
