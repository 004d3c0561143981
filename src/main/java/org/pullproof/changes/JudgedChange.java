package org.pullproof.changes;

import java.util.Optional;

/**
 * One comparison of two setups.
 *
 * @param name "base → timing 32°"
 * @param from id of the older setup
 * @param to id of the newer setup
 * @param recorded whether this is the step the newer setup was made by
 * @param change the recorded change, if this comparison is one
 * @param beforeKw mean band power of the older setup's pulls, kW
 * @param afterKw mean band power of the newer setup's pulls, kW
 * @param differencePercent estimate of the fit, percent
 * @param low lower end of the 90 % interval, percent
 * @param high upper end of the 90 % interval, percent
 * @param differenceKw estimate in kW on the older setup's mean
 * @param lowKw lower end in kW
 * @param highKw upper end in kW
 * @param call what may be said
 * @param holdsForAll whether the call still holds allowing for all changes tried (Holm)
 * @param settling what would settle it
 * @param curve the difference over engine speed; absent where the pulls share too few speeds or cannot be compared
 * @param sentence the call in words
 */
public record JudgedChange(
        String name,
        String from,
        String to,
        boolean recorded,
        Optional<Change> change,
        double beforeKw,
        double afterKw,
        double differencePercent,
        double low,
        double high,
        double differenceKw,
        double lowKw,
        double highKw,
        Call call,
        boolean holdsForAll,
        Settling settling,
        Optional<CurveBand> curve,
        String sentence) {
    JudgedChange withSentence(String next) {
        return new JudgedChange(
                name,
                from,
                to,
                recorded,
                change,
                beforeKw,
                afterKw,
                differencePercent,
                low,
                high,
                differenceKw,
                lowKw,
                highKw,
                call,
                holdsForAll,
                settling,
                curve,
                next);
    }
}
