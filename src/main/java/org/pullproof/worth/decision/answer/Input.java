package org.pullproof.worth.decision.answer;

/** A main input of the answer, as flips and noise move it. */
public sealed interface Input {
    /** Its name in the files and on the command line: {@code valuePerHp}, {@code p:rings}. */
    String key();

    /** An input that every problem has. */
    enum Common implements Input {
        VALUE_PER_HP("valuePerHp"),
        HOUR_PRICE("hourPrice"),
        WORTH_SOUND("worthSound"),
        MONTHS_KEPT("monthsKept"),
        WEEK_WITHOUT("weekWithout"),
        RESALE_SHARE("resaleShare"),
        PRICE("price"),
        REPAIR_OVERRUN("quotes:repair"),
        REBUILD_OVERRUN("quotes:rebuild"),
        HOURS_OVERRUN("quotes:hours"),
        GAINS("gains"),
        HAZARDS("hazards"),
        DISCOUNTS("discounts");

        private final String key;

        Common(String key) {
            this.key = key;
        }

        @Override
        public String key() {
            return key;
        }
    }

    /**
     * The chance of a fault.
     *
     * @param fault its key in the problem
     */
    record Chance(String fault) implements Input {
        @Override
        public String key() {
            return "p:" + fault;
        }
    }
}
