package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.drawing.Panel.PullLine;
import org.pullproof.drawing.Panel.SetupLine;
import org.pullproof.drawing.SetupCurves.Mean;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Role;
import org.pullproof.units.Shown;

/**
 * The panels of a chart with their figures, computed once from the pulls; a picture of any size and the crosshair are drawn from
 * them. Immutable.
 */
public final class ChartPanels {
    private static final int MOST_NAMED = 7;
    private static final int MOST_HAIRLINES = 30;
    private static final double RAD_PER_RPM = Math.PI / 30;
    private static final double POWER_SHARE = 0.42;
    private static final double TORQUE_SHARE = 0.27;
    private static final double DIFFERENCE_SHARE = 0.31;
    private static final double FURTHER_SHARE = 0.22;

    private final PowerChart.Content content;
    private final ChartLook look;
    private final SetupCurves curves;
    private final Speeds speeds;
    private final List<Panel> panels;

    private ChartPanels(PowerChart.Content content, ChartLook look, SetupCurves curves, Speeds speeds) {
        this.content = content;
        this.look = look;
        this.curves = curves;
        this.speeds = speeds;
        this.panels = curves.isEmpty() ? List.of() : new Made(content, look, curves, speeds).panels();
    }

    /** Computes the panels of the pulls that count. */
    public static ChartPanels of(PowerChart.Content content, ChartLook look) {
        SetupCurves curves = SetupCurves.of(content.findings(), content.setups());
        Speeds whole = new Speeds(curves.fromRpm(), Math.max(curves.toRpm(), curves.fromRpm() + 1));
        return new ChartPanels(content, look, curves, look.zoom().orElse(whole));
    }

    PowerChart.Content content() {
        return content;
    }

    ChartLook look() {
        return look;
    }

    /** The speeds shown. */
    public Speeds speeds() {
        return speeds;
    }

    List<Panel> panels() {
        return panels;
    }

    List<Mean> setups() {
        return curves.setups();
    }

    public boolean isEmpty() {
        return panels.isEmpty();
    }

    boolean chosen(String setup) {
        return content.chosen().filter(setup::equals).isPresent();
    }

    /** What may be shown besides power: all that some counted pull has logged, in the order of {@link Role}. */
    public static List<Role> logged(PowerChart.Content content) {
        return Stream.of(Role.LAMBDA, Role.THROTTLE, Role.COOLANT, Role.OIL, Role.INTAKE, Role.BOOST)
                .filter(role -> content.findings().pulls().stream()
                        .anyMatch(pull ->
                                !pull.excluded() && pull.trace().recording().logs(role)))
                .toList();
    }

    /** What a panel shows of a point of a power curve. */
    private interface Value {
        double of(double rpm, double watt);
    }

    /** Makes the panels. */
    private record Made(PowerChart.Content content, ChartLook look, SetupCurves curves, Speeds speeds) {
        List<Panel> panels() {
            List<Panel> panels = new ArrayList<>();
            panels.add(ofPower(
                    Shown.POWER, PowerChart.powerWords(content), standardWords(), POWER_SHARE, (rpm, watt) -> watt));
            panels.add(ofPower(
                    Shown.TORQUE,
                    PowerChart.torqueWords(content),
                    "",
                    TORQUE_SHARE,
                    (rpm, watt) -> watt / (rpm * RAD_PER_RPM)));
            LoggedCurves logged = new LoggedCurves(content);
            look.further().forEach(role -> panels.add(further(role, logged)));
            panels.add(difference());
            return panels;
        }

        private String standardWords() {
            String standard = curves.corrected() ? content.standard().words() : "not corrected";
            return standard + " · smoothed over " + PowerCurve.SMOOTHING + " rpm";
        }

        private Panel ofPower(Shown shown, String title, String detail, double share, Value value) {
            Value inUnit = (rpm, watt) -> content.figures().unit(shown).fromSi(value.of(rpm, watt));
            List<PullLine> all = curves.setups().stream()
                    .flatMap(mean -> mean.pulls().stream())
                    .map(pull -> pullLine(pull, inUnit))
                    .toList();
            return new Panel(
                    title,
                    detail,
                    content.figures().unit(shown).symbol(),
                    shown.decimals(content.figures().system()),
                    false,
                    share,
                    drawn().stream()
                            .map(mean -> setupLine(mean, values(mean.mean(), inUnit)))
                            .toList(),
                    hairlines(inUnit),
                    ends(all),
                    OptionalDouble.empty());
        }

        /** The least and the greatest figure of any pull: the axis encloses them, drawn or not. */
        private static List<Double> ends(List<PullLine> all) {
            double[] figures = all.stream()
                    .flatMapToDouble(line -> IntStream.range(0, line.size()).mapToDouble(line::value))
                    .sorted()
                    .toArray();
            return figures.length == 0 ? List.of() : List.of(figures[0], figures[figures.length - 1]);
        }

        private SetupLine setupLine(Mean mean, SortedMap<Integer, Double> values) {
            return new SetupLine(mean.order(), mean.setup(), mean.name(), values);
        }

        private SortedMap<Integer, Double> values(SortedMap<Integer, Double> watt, Value value) {
            SortedMap<Integer, Double> values = new TreeMap<>();
            inside(watt).forEach((rpm, power) -> values.put(rpm, value.of(rpm, power)));
            return values;
        }

        private SortedMap<Integer, Double> inside(SortedMap<Integer, Double> values) {
            return values.subMap(speeds.fromRpm(), speeds.toRpm() + 1);
        }

        /** Base and the latest setups get a line of their own, the others only hairlines. */
        private List<Mean> drawn() {
            List<Mean> all = curves.setups();
            return all.size() <= MOST_NAMED
                    ? all
                    : Stream.concat(
                                    all.stream().limit(1),
                                    all.subList(all.size() - MOST_NAMED + 1, all.size()).stream())
                            .toList();
        }

        private List<PullLine> hairlines(Value value) {
            boolean all = content.findings().pulls().size() < MOST_HAIRLINES;
            return curves.setups().stream()
                    .filter(mean -> all || content.chosen().equals(Optional.of(mean.setup())))
                    .flatMap(mean -> mean.pulls().stream())
                    .map(pull -> pullLine(pull, value))
                    .toList();
        }

        private PullLine pullLine(SetupCurves.Curve pull, Value value) {
            int[] inside = IntStream.range(0, pull.curve().size())
                    .filter(i -> pull.curve().rpm(i) >= speeds.fromRpm()
                            && pull.curve().rpm(i) <= speeds.toRpm())
                    .toArray();
            double[] values = IntStream.of(inside)
                    .mapToDouble(i -> value.of(pull.curve().rpm(i), pull.watt(i)))
                    .toArray();
            return new PullLine(inside.length == 0 ? 0 : pull.curve().rpm(inside[0]), PowerCurve.STEP, values);
        }

        private Panel further(Role role, LoggedCurves logged) {
            String unit = logged.unit(role);
            List<SetupLine> lines = logged.lines(role).stream()
                    .filter(line ->
                            drawn().stream().anyMatch(mean -> mean.setup().equals(line.setup())))
                    .map(line -> new SetupLine(line.order(), line.setup(), line.name(), inside(line.values())))
                    .toList();
            String title =
                    Character.toUpperCase(role.words().charAt(0)) + role.words().substring(1);
            return new Panel(
                    title + (unit.isEmpty() ? "" : ", " + unit),
                    "mean of the pulls in steps of " + LoggedCurves.STEP + " rpm",
                    unit.isEmpty() ? role.words() : unit,
                    role == Role.LAMBDA ? 3 : 1,
                    false,
                    FURTHER_SHARE,
                    lines,
                    List.of(),
                    List.of(),
                    OptionalDouble.empty());
        }

        private Panel difference() {
            Mean base = curves.base().orElseThrow();
            double ribbon = content.ribbonPercent().orElse(0);
            return new Panel(
                    "Difference from " + base.name() + ", %",
                    content.ribbonPercent().isPresent() ? "ribbon: repeatability of one pull, 90 %" : "",
                    "from " + base.name(),
                    1,
                    true,
                    DIFFERENCE_SHARE,
                    drawn().stream()
                            .map(mean -> setupLine(mean, inside(over(base, mean))))
                            .toList(),
                    List.of(),
                    List.of(-ribbon, ribbon, -0.5, 0.5),
                    content.ribbonPercent());
        }

        private static SortedMap<Integer, Double> over(Mean base, Mean mean) {
            SortedMap<Integer, Double> percent = new TreeMap<>();
            mean.mean().forEach((speed, watt) -> {
                Double before = base.mean().get(speed);
                if (before != null && before > 0) {
                    percent.put(speed, 100 * (watt / before - 1));
                }
            });
            return percent;
        }
    }
}
