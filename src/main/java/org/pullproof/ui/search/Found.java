package org.pullproof.ui.search;

/**
 * Something that can be found and chosen.
 *
 * @param group what kind of thing it is
 * @param title what it is, in a few words
 * @param detail what more is known of it, or why it can't be done now; may be empty
 * @param key the key that does the same, or empty
 * @param chosen goes there, or does it
 */
public record Found(Group group, String title, String detail, String key, Runnable chosen) {
    /** Something a person can do. */
    public static Found act(String title, String detail, String key, Runnable act) {
        return new Found(Group.DO, title, detail, key, act);
    }

    /** Something the session holds. */
    public static Found inSession(Place place, Runnable go) {
        return new Found(
                Group.SESSION, place.title(), place.detail(), place.stage().words(), go);
    }
}
