package org.pullproof.health;

import java.util.Arrays;
import java.util.Optional;
import org.pullproof.car.Access;

/** A test of the engine's health; the key is its name in tables and on the command line. */
public enum TestKind {
    BALANCE("balance", "Balance", Access.START_IT, true),
    COMPRESSION_DRY("compression-dry", "Compression, dry", Access.PLUGS_OUT, true),
    COMPRESSION_WET("compression-wet", "Compression, wet", Access.PLUGS_OUT, true),
    LEAKDOWN("leakdown", "Leak-down", Access.PLUGS_OUT, true),
    PLUG("plug", "Plug's look", Access.PLUGS_OUT, true),
    LASH("lash", "Lash", Access.OWN_IT, true),
    BORESCOPE("borescope", "Borescope", Access.PLUGS_OUT, true),
    COIL_SWAP("coil-swap", "Coil swap", Access.START_IT, true),
    RUNNING_COMPRESSION("running-compression", "Running compression", Access.PLUGS_OUT, true),
    STARTER_CURRENT("starter-current", "Starter humps", Access.START_IT, true),
    COOLANT_GAS("coolant-gas", "Coolant gas", Access.START_IT, false),
    OIL_PRESSURE("oil-pressure", "Oil, hot idle", Access.START_IT, false),
    VACUUM("vacuum", "Vacuum", Access.START_IT, false),
    FILTER_CUT("filter-cut", "Cut filter", Access.OWN_IT, false),
    COOLING_HOLD("cooling-hold", "Cooling pressure", Access.START_IT, false),
    CHAIN_SLACK("chain-slack", "Cam drive slack", Access.PLUGS_OUT, false),
    CHARGING("charging", "Charging", Access.START_IT, false),
    MISFIRES("misfires", "Misfires counted", Access.START_IT, true),
    TRIMS("trims", "Fuel trim, bank", Access.START_IT, true),
    CODES("codes", "Codes", Access.START_IT, false),
    OBSERVATION("observation", "Observed", Access.LOOK_ONLY, false),
    WORK("work", "Work done", Access.OWN_IT, true);

    private final String key;
    private final String words;
    private final Access access;
    private final boolean byCylinder;

    TestKind(String key, String words, Access access, boolean byCylinder) {
        this.key = key;
        this.words = words;
        this.access = access;
        this.byCylinder = byCylinder;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** What the owner must permit for this test. */
    public Access access() {
        return access;
    }

    /** Whether a reading belongs to one cylinder (work may also concern the whole engine). */
    public boolean byCylinder() {
        return byCylinder;
    }

    public static Optional<TestKind> named(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }
}
