package org.pullproof.advice;

/**
 * One point of the gate before the first pull.
 *
 * @param key its name on the command line and on disk
 * @param about engine, tune-up, car, room or people
 * @param name what must be right: "no deep knock"
 * @param state how it stands
 * @param why what was read, ticked or typed
 */
public record GatePoint(String key, String about, String name, State state, String why) {

    /** How a point stands. */
    public enum State {
        READ("read"),
        TICKED("ticked"),
        PASSED("passed with a reason"),
        OPEN("open"),
        AGAINST("speaks against it");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Whether it no longer stands in the way. */
    public boolean passed() {
        return state != State.OPEN && state != State.AGAINST;
    }

    /** "open: brakes hold and run free (nobody ticked it today)". */
    public String sentence() {
        return state.words() + ": " + name + (why.isEmpty() ? "" : " (" + why + ")");
    }
}
