package org.pullproof.ui.search;

import org.pullproof.advice.Stage;

/**
 * Something a session holds, and the sheet it stands on.
 *
 * @param title what it is, in a few words
 * @param detail what more is known of it, may be empty
 * @param stage the sheet on which it stands
 */
public record Place(String title, String detail, Stage stage) {}
