package org.pullproof.dyno;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pullproof.units.Unit;

/**
 * One header cell taken apart: {@code P [kW]}, {@code Torque (ft-lb)}, {@code power_hp}, {@code power kW}, {@code rpm}.
 *
 * @param text the cell as it stands
 * @param name its words without the unit, in small letters
 * @param unit the unit it names, if one known here
 * @param strangeUnit what stands in brackets but is no unit known here
 */
record Header(String text, String name, Optional<Unit> unit, Optional<String> strangeUnit) {
    private static final Pattern BRACKETS = Pattern.compile("(.*?)[\\s_]*[\\[(]([^\\])]*)[\\])]\\s*");
    private static final Pattern LAST_WORD = Pattern.compile("(.*?)[\\s_,/:]+(\\S+)");
    private static final Pattern CORRECTED = Pattern.compile("(?i)\\b(corr\\w*|sae|din|iso|std)\\b");
    private static final Set<String> SPEED_NAMES =
            Set.of("rpm", "n", "revs", "engine speed", "engine rpm", "rpm engine", "motor speed", "crank speed");

    /** Words of a speed that is not the engine's. */
    private static final List<String> OTHER_SPEEDS =
            List.of("roll", "drum", "wheel", "turbo", "shaft", "vehicle", "road");

    static Header of(String cell) {
        String text = cell.strip();
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches()) {
            return bracketed(text, brackets.group(1), brackets.group(2).strip());
        }
        Optional<Unit> whole = Unit.named(text);
        if (whole.isPresent()) {
            return new Header(text, plain(text), whole, Optional.empty());
        }
        return trailingUnit(text).orElse(new Header(text, plain(text), Optional.empty(), Optional.empty()));
    }

    private static Header bracketed(String text, String words, String inside) {
        Optional<Unit> unit = Unit.named(inside);
        if (unit.isPresent()) {
            return new Header(text, plain(words), unit, Optional.empty());
        }
        Optional<Header> before = trailingUnit(words);
        return before.isPresent()
                ? new Header(text, before.get().name(), before.get().unit(), Optional.empty())
                : new Header(text, plain(words), Optional.empty(), Optional.of(inside));
    }

    private static Optional<Header> trailingUnit(String text) {
        Matcher last = LAST_WORD.matcher(text.replaceAll("(?i)(lb|ft|n|kgf)[\\s_](ft|lb|m)$", "$1-$2")
                .replaceAll("(?i)(rad|km|mi)[_](s|h)$", "$1/$2"));
        return last.matches()
                ? Unit.named(last.group(2))
                        .map(unit -> new Header(text, plain(last.group(1)), Optional.of(unit), Optional.empty()))
                : Optional.empty();
    }

    private static String plain(String words) {
        return words.replace('_', ' ').strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    Header withUnit(Unit told) {
        return new Header(text, name, Optional.of(told), Optional.empty());
    }

    /** Whether this column could have that role by its name or its unit. */
    boolean mayBe(Role role) {
        if (unit.isPresent() && !role.takes(unit.get().dimension())) {
            return false;
        }
        return switch (role) {
            case RPM -> isEngineSpeed();
            case POWER -> unit.isPresent() || name.equals("p") || name.contains("power");
            case TORQUE -> unit.isPresent() || name.equals("m") || name.contains("torque");
            default -> HeaderWords.suit(role, name, unit);
        };
    }

    private boolean isEngineSpeed() {
        boolean another = OTHER_SPEEDS.stream().anyMatch(name::contains);
        boolean turns = unit.filter(told -> told == Unit.RPM).isPresent();
        return !another && (turns || SPEED_NAMES.contains(name) || name.endsWith(" rpm"));
    }

    /** Whether a person's name for a column means this one. */
    boolean isCalled(String header) {
        return text.equalsIgnoreCase(header.strip()) || name.equals(plain(header));
    }

    /** Whether the header says that its figures are corrected already. */
    boolean saysCorrected() {
        return CORRECTED.matcher(text.replace('_', ' ')).find();
    }
}
