package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;

/**
 * The lines of a chart: for each setup the mean of its pulls at every speed that all of them cover.
 *
 * @param setups in order of their first pull
 * @param corrected whether all power here is corrected; if one pull has no air, none is
 */
record SetupCurves(List<Mean> setups, boolean corrected) {

    /**
     * @param order place among the setups, from 0
     * @param setup id
     * @param name what people call it
     * @param mean watt by rpm
     * @param pulls the lines it is the mean of
     */
    record Mean(int order, String setup, String name, SortedMap<Integer, Double> mean, List<Curve> pulls) {}

    /** One pull with the factor its power is shown with. */
    record Curve(PowerCurve curve, double factor) {
        double watt(int i) {
            return curve.watt(i) * factor;
        }
    }

    static SetupCurves of(DynoFindings findings, List<Setup> setups) {
        List<PullFindings> counted = comparable(findings);
        boolean corrected = counted.stream().allMatch(pull -> pull.factor().isPresent());
        List<String> ids = LineStyle.setups(findings);
        List<Mean> means = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            List<Curve> pulls = counted.stream()
                    .filter(pull -> pull.pull().setup().equals(id))
                    .map(pull -> new Curve(pull.curve(), corrected ? factor(pull) : 1))
                    .toList();
            if (!pulls.isEmpty()) {
                means.add(new Mean(i, id, name(id, setups), mean(pulls), pulls));
            }
        }
        return new SetupCurves(List.copyOf(means), corrected && !counted.isEmpty());
    }

    /**
     * The pulls that may stand in one picture: all that count if each has its factor, else all that are as measured. Figures
     * corrected to two standards are never drawn together.
     */
    private static List<PullFindings> comparable(DynoFindings findings) {
        List<PullFindings> counted = findings.pulls().stream()
                .filter(pull -> !pull.excluded())
                .filter(pull -> pull.factor().isPresent()
                        || pull.pull().correctedAlready().isEmpty())
                .toList();
        boolean allCorrected = counted.stream().allMatch(pull -> pull.factor().isPresent());
        return counted.stream()
                .filter(pull -> allCorrected || pull.pull().correctedAlready().isEmpty())
                .toList();
    }

    private static double factor(PullFindings pull) {
        return pull.factor().map(by -> by.value()).orElse(1.0);
    }

    static String name(String id, List<Setup> setups) {
        return setups.stream()
                .filter(setup -> setup.id().equals(id))
                .map(Setup::name)
                .findFirst()
                .orElse(id);
    }

    private static SortedMap<Integer, Double> mean(List<Curve> pulls) {
        SortedMap<Integer, Double> sums = new TreeMap<>();
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        for (Curve pull : pulls) {
            for (int i = 0; i < pull.curve().size(); i++) {
                sums.merge(pull.curve().rpm(i), pull.watt(i), Double::sum);
                counts.merge(pull.curve().rpm(i), 1, Integer::sum);
            }
        }
        sums.keySet().removeIf(rpm -> counts.getOrDefault(rpm, 0) < pulls.size());
        sums.replaceAll((rpm, sum) -> sum / pulls.size());
        return sums;
    }

    boolean isEmpty() {
        return setups.isEmpty();
    }

    Optional<Mean> base() {
        return setups.stream().findFirst();
    }

    /** The lowest speed of any line, rpm. */
    int fromRpm() {
        return speeds().min().orElse(0);
    }

    /** The highest speed of any line, rpm. */
    int toRpm() {
        return speeds().max().orElse(0);
    }

    private IntStream speeds() {
        return setups.stream()
                .flatMap(mean -> mean.pulls().stream())
                .filter(pull -> pull.curve().size() > 0)
                .flatMapToInt(pull -> IntStream.of(
                        pull.curve().rpm(0), pull.curve().rpm(pull.curve().size() - 1)));
    }
}
