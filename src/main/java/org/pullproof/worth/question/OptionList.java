package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Cure;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Node;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Option.Role;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.Quote;
import org.pullproof.worth.question.Gains.Better;
import org.pullproof.worth.trade.Plan;
import org.pullproof.worth.trade.Work;

/** The options that make sense for one car now: of the trade, of its own measured setups, and the owner's own. */
final class OptionList {
    private static final String HASSLE = "hassle";
    private static final String SET_UP_AGAIN = "set-up-again";

    private final Bench bench;
    private final Standing standing;
    private final List<Better> better;
    private final boolean anyPulls;

    /**
     * How the car stands.
     *
     * @param owned whether it is bought
     * @param mayRun whether the engine runs and nothing read forbids it
     * @param forbidden whether something read forbids it to run
     * @param partsWorthwhile whether its parts are worth much of it
     */
    record Standing(boolean owned, boolean mayRun, boolean forbidden, boolean partsWorthwhile) {}

    OptionList(Bench bench, Standing standing, Gains gains) {
        this.bench = bench;
        this.standing = standing;
        this.better = standing.owned() ? gains.better() : List.of();
        this.anyPulls = gains.anyPulls();
    }

    /**
     * @param entered the owner's own options, in the currency of the problem
     */
    List<Option> of(List<org.pullproof.worth.Option> entered) {
        Set<String> replaced = entered.stream().map(own -> plain(own.name())).collect(Collectors.toSet());
        List<Option> options = new ArrayList<>();
        for (Plan plan : bench.catalogue().plans()) {
            if (offered(plan) && !(replaced.contains(plain(plan.name())) && !isOneWork(plan))) {
                options.add(option(plan));
            }
        }
        if (standing.mayRun()) {
            better.forEach(setup -> options.add(goTo(setup)));
        }
        Set<String> names = options.stream().map(option -> plain(option.name())).collect(Collectors.toSet());
        entered.stream().filter(own -> !names.contains(plain(own.name()))).forEach(own -> options.add(own(own)));
        return options;
    }

    private static String plain(String words) {
        return words.strip().toLowerCase(Locale.ROOT);
    }

    /** Whether a work of the same words stands behind it, whose figures the owner's have replaced already. */
    private boolean isOneWork(Plan plan) {
        return bench.catalogue().works().values().stream().map(Work::words).anyMatch(plan.name()::equalsIgnoreCase);
    }

    private boolean offered(Plan plan) {
        return plan.owned() == standing.owned()
                && plan.runs().orElse(standing.mayRun()) == standing.mayRun()
                && (plan.suspects().isEmpty() || bench.suspects(plan.suspects()))
                && (plan.needsWork().isEmpty()
                        || !bench.left(List.copyOf(plan.needsWork())).isEmpty())
                && (!plan.forParts() || standing.partsWorthwhile())
                && (!plan.afterDays() || anyPulls);
    }

    private Option option(Plan plan) {
        String name = nameOf(plan);
        PlanTree tree = new PlanTree(bench, standing.mayRun(), plan.role() == Role.OTHER ? provedGain() : List.of());
        Node node = tree.of(plan.tree());
        if (plan.role() == Role.BUYS) {
            return new Option(name, Role.BUYS, "buy", bought(node));
        }
        boolean asNow = plan.afterDays() && !better.isEmpty() && better.get(0).proved();
        String first = asNow ? goToName(better.get(0)) : plan.firstAct().orElse(name);
        return new Option(name, plan.role(), first, plan.role() == Role.OTHER ? withProved(node) : node);
    }

    /** What the reference is called where something read forbids the engine to run. */
    private String nameOf(Plan plan) {
        return plan.role() == Role.REFERENCE && standing.owned() && standing.forbidden()
                ? "stop, do not drive"
                : plan.name();
    }

    private Node bought(Node then) {
        List<CostLine> lines = new ArrayList<>(List.of(CostLine.purchase()));
        bench.left(List.of(HASSLE)).stream().map(bench::line).forEach(lines::add);
        return new Node.Do(lines, then);
    }

    /** The setup that is proved better: whoever goes on working sets it up too. */
    private Optional<Better> proved() {
        return better.stream().filter(Better::proved).findFirst();
    }

    private List<Gain> provedGain() {
        return proved().<List<Gain>>map(setup -> List.of(setup.gain())).orElse(List.of());
    }

    private Node withProved(Node node) {
        return proved().<Node>map(setup -> keeps(node) ? new Node.Do(List.of(setUpAgain(setup)), node) : node)
                .orElse(node);
    }

    private static boolean keeps(Node node) {
        return !(node instanceof Node.End);
    }

    private static String goToName(Better setup) {
        return "go to setup " + setup.name() + " and stop";
    }

    private Option goTo(Better setup) {
        Node end = new Node.End(Ending.KEEP, Cure.NONE, List.of(setup.gain()));
        return Option.of(goToName(setup), Role.OTHER, new Node.Do(List.of(setUpAgain(setup)), end));
    }

    private CostLine setUpAgain(Better setup) {
        CostLine usual = bench.line(bench.catalogue().work(SET_UP_AGAIN));
        return new CostLine(
                "set up " + setup.name() + " again",
                usual.kind(),
                usual.quote(),
                usual.overrun(),
                usual.hours(),
                usual.weeks(),
                usual.find(),
                usual.when());
    }

    /** An option of the owner: one bill, then the car is kept. */
    private Option own(org.pullproof.worth.Option own) {
        Quote quote =
                new Quote(own.low().value(), own.likely().value(), own.high().value());
        CostLine line = CostLine.work(own.name(), quote, quote.isFixed() ? Overrun.NONE : Overrun.REPAIR)
                .taking(own.hours(), 0);
        List<Gain> gains = new ArrayList<>();
        own.gain().ifPresent(gain -> gains.add(new Gain.Expected(own.name(), gain.normal())));
        Ending ending = standing.mayRun() ? Ending.KEEP : Ending.LAY_UP;
        Node node =
                new Node.Do(List.of(line), new Node.End(ending, Cure.NONE, ending == Ending.KEEP ? gains : List.of()));
        return standing.owned()
                ? Option.of(own.name(), Role.OTHER, node)
                : new Option("buy, " + own.name(), Role.BUYS, "buy", bought(node));
    }
}
