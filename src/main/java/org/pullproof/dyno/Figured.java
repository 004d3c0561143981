package org.pullproof.dyno;

/**
 * A figure of a pull that is held against those of others.
 *
 * @param kind how it is got out of what was logged
 * @param role what was logged
 */
record Figured(Kind kind, Role role) {
    enum Kind {
        /** Mean over the rows in the band. */
        MEAN,
        /** The first that was logged. */
        FIRST,
        /** How fast it rises over the band, a second. */
        RATE
    }

    static Figured mean(Role role) {
        return new Figured(Kind.MEAN, role);
    }

    static Figured first(Role role) {
        return new Figured(Kind.FIRST, role);
    }

    static Figured sweepRate() {
        return new Figured(Kind.RATE, Role.RPM);
    }

    /** NaN where it was not logged. */
    double of(Judged pull) {
        return switch (kind) {
            case MEAN -> pull.mean(role);
            case FIRST -> pull.first(role);
            case RATE -> pull.sweepRate();
        };
    }
}
