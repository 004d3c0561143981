package org.pullproof.dyno;

/**
 * Something in a pull file that was left out, or is to be minded, while the rest was taken in.
 *
 * @param line where, from 1
 * @param column the header of the column; empty if it concerns the row
 * @param message a sentence on what was found and what was done
 */
public record ImportProblem(int line, String column, String message) {}
