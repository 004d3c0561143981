package org.pullproof.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.dyno.PullLimits;
import org.pullproof.health.HealthLimits;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.session.Judgement;
import org.pullproof.session.Problem;
import org.pullproof.session.TradeConstant;
import org.pullproof.worth.trade.Catalogue;
import org.pullproof.worth.trade.JudgedNumber;

/** The constants that the program judges by, and those of a session that has its own. Immutable. */
public final class TradeConstants {
    /** Shares of a row add up to their sum within this. */
    private static final double ROUNDING = 1e-6;

    /** First part of the names of the numbers that money rests on. */
    public static final String MONEY = "money.";

    private final Catalogue money = MoneyCatalogueFile.read();
    private final ConstantsFile<FaultConstants> faults =
            new ConstantsFile<>("faults", "/org/pullproof/health/faults.json", FaultConstants.class);
    private final ConstantsFile<HealthLimits> health =
            new ConstantsFile<>("health", "/org/pullproof/health/health-limits.json", HealthLimits.class);
    private final ConstantsFile<PullLimits> pulls =
            new ConstantsFile<>("pulls", "/org/pullproof/dyno/pull-limits.json", PullLimits.class);

    public FaultConstants faults(Judgement judgement) {
        return faults.read(judgement);
    }

    public HealthLimits health(Judgement judgement) {
        return health.read(judgement);
    }

    public PullLimits pulls(Judgement judgement) {
        return pulls.read(judgement);
    }

    /** Works, faults and options of money with their numbers. */
    public Catalogue money(Judgement judgement) {
        Map<String, Double> own = new LinkedHashMap<>();
        judgement.edited().forEach((name, value) -> {
            if (name.startsWith(MONEY)) {
                own.put(name.substring(MONEY.length()), value);
            }
        });
        return money.with(own);
    }

    /** Every constant of the program, in the order of its files. */
    public List<TradeConstant> all() {
        return Stream.concat(
                        Stream.of(health, faults, pulls).flatMap(file -> file.constants().stream()),
                        money.numbers().all().stream().map(TradeConstants::constant))
                .toList();
    }

    private static TradeConstant constant(JudgedNumber number) {
        String name = MONEY + number.key();
        TradeConstant.Figure figure = new TradeConstant.Figure(name, "", name, number.value());
        String words = number.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + number.words().substring(1) + ".";
        return new TradeConstant(name, words, number.unit(), "judgement", Optional.empty(), List.of(figure));
    }

    /**
     * What is wrong with values in the place of the program's own.
     *
     * @return one sentence each, with the name of the value
     */
    public List<Problem> problems(Judgement judgement) {
        Map<String, TradeConstant> byNumber = new LinkedHashMap<>();
        all().forEach(constant -> constant.numbers().forEach(number -> byNumber.put(number.name(), constant)));
        List<Problem> problems = new ArrayList<>();
        judgement
                .edited()
                .forEach((name, value) -> Optional.ofNullable(byNumber.get(name))
                        .map(constant -> wrong(constant, name, value))
                        .orElseGet(() -> Optional.of("there is no such value" + nearest(name, byNumber.keySet())))
                        .ifPresent(sentence -> problems.add(new Problem("judgement", name, sentence + "."))));
        byNumber.values().stream().distinct().forEach(constant -> problems.addAll(unbalanced(constant, judgement)));
        if (problems.isEmpty()) {
            unreadable(judgement).ifPresent(problems::add);
        }
        return problems;
    }

    private static Optional<String> wrong(TradeConstant constant, String name, double value) {
        if (!constant.isEditable()) {
            return Optional.of("this value is not judgement (" + constant.status() + ") and stays as it is");
        }
        TradeConstant.Figure number = constant.numbers().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        return value >= constant.least(number) && value <= constant.most(number)
                ? Optional.empty()
                : Optional.of(value + " is too far from the program's own " + number.own() + ": it goes from "
                        + constant.least(number) + " to " + constant.most(number));
    }

    private static String nearest(String name, Iterable<String> names) {
        String last = name.substring(name.lastIndexOf('.') + 1);
        List<String> near = new ArrayList<>();
        names.forEach(known -> {
            if (known.endsWith("." + last)) {
                near.add(known);
            }
        });
        return near.isEmpty() ? "" : "; did you mean " + String.join(" or ", near) + "?";
    }

    private static List<Problem> unbalanced(TradeConstant constant, Judgement judgement) {
        if (constant.sum().isEmpty()
                || constant.numbers().stream()
                        .noneMatch(number -> judgement.of(number.name()).isPresent())) {
            return List.of();
        }
        double wanted = constant.sum().orElseThrow();
        Map<String, Double> sums = constant.numbers().stream()
                .collect(Collectors.groupingBy(
                        TradeConstant.Figure::row,
                        LinkedHashMap::new,
                        Collectors.summingDouble(
                                number -> judgement.of(number.name()).orElse(number.own()))));
        return sums.entrySet().stream()
                .filter(row -> Math.abs(row.getValue() - wanted) > ROUNDING)
                .map(row -> new Problem(
                        "judgement",
                        row.getKey(),
                        "its values add up to " + row.getValue() + ", not to " + wanted + "; give them together."))
                .sorted(Comparator.comparing(Problem::toString))
                .toList();
    }

    private Optional<Problem> unreadable(Judgement judgement) {
        try {
            faults(judgement);
            health(judgement);
            pulls(judgement);
            money(judgement);
            return Optional.empty();
        } catch (IllegalArgumentException unfit) {
            return Optional.of(new Problem("judgement", "", String.valueOf(unfit.getMessage())));
        }
    }
}
