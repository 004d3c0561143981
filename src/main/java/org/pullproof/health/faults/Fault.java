package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What may be wrong with a cylinder; the key is its name in tables and on the command line. */
public enum Fault {
    SOUND("sound", "sound", Family.SOUND),
    IGNITION("ignition", "no spark", Family.SPARK_OR_MIXTURE),
    FUEL("fuel", "no fuel", Family.SPARK_OR_MIXTURE),
    VACUUM_LEAK("vacuum-leak", "false air at its runner", Family.SPARK_OR_MIXTURE),
    VALVE_HELD_OPEN("valve-held-open", "a valve held open", Family.VALVE),
    EXHAUST_VALVE("exhaust-valve", "the exhaust valve", Family.VALVE),
    INTAKE_VALVE("intake-valve", "the intake valve", Family.VALVE),
    RINGS("rings", "rings or bore", Family.RINGS_OR_PISTON),
    PISTON("piston", "a holed piston", Family.RINGS_OR_PISTON),
    GASKET_COOLANT("gasket-coolant", "a gasket or crack to the coolant", Family.COOLANT),
    VALVE_NOT_OPENING("valve-not-opening", "a valve that does not open", Family.NOT_OPENING),
    OTHER("other", "readings that do not fit together", Family.OTHER),
    /** A fault of two neighbours at once. */
    GASKET_NEIGHBOUR("gasket-neighbour", "the gasket to its neighbour", Family.NEIGHBOUR);

    /** Faults that one word names where the readings do not part them. */
    public enum Family {
        SOUND("sound"),
        SPARK_OR_MIXTURE("spark or mixture"),
        VALVE("a valve that leaks"),
        RINGS_OR_PISTON("rings or piston"),
        COOLANT("a gasket or crack to the coolant"),
        NOT_OPENING("a valve that does not open"),
        OTHER("readings that do not fit together"),
        NEIGHBOUR("the gasket to its neighbour");

        private final String words;

        Family(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final List<Fault> OF_ONE_CYLINDER =
            Arrays.stream(values()).filter(fault -> fault != GASKET_NEIGHBOUR).toList();

    private final String key;
    private final String words;
    private final Family family;

    Fault(String key, String words, Family family) {
        this.key = key;
        this.words = words;
        this.family = family;
    }

    public String key() {
        return key;
    }

    /** As a clause continues: "it leaks at …", "most likely …". */
    public String words() {
        return words;
    }

    public Family family() {
        return family;
    }

    /** Whether air leaks out of the cylinder: what starter humps speak of. */
    public boolean leaks() {
        return switch (family) {
            case VALVE, RINGS_OR_PISTON, COOLANT, NEIGHBOUR -> true;
            case SOUND, SPARK_OR_MIXTURE, NOT_OPENING, OTHER -> false;
        };
    }

    /** All that may hold for one cylinder alone, {@code SOUND} first. */
    public static List<Fault> ofOneCylinder() {
        return OF_ONE_CYLINDER;
    }

    public static Optional<Fault> named(String key) {
        return Arrays.stream(values()).filter(fault -> fault.key.equals(key)).findFirst();
    }
}
