package org.pullproof.app;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.car.Fact;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.weather.Standard;

/** Tells or forgets facts about the car and wishes of its owner: all of them or none. */
public final class SetFacts {
    /** No {@link Fact}: what power is corrected to. */
    public static final String STANDARD = "standard";

    /** No {@link Fact}: a power that another dyno's sheet states, see {@link StatedFigure#parse}. */
    public static final String SELLER_FIGURE = "seller-figure";

    private final SessionDesk desk;
    private final Clock clock;

    public SetFacts(SessionDesk desk, Clock clock) {
        this.desk = desk;
        this.clock = clock;
    }

    /**
     * @param values what to tell, by name; an empty text forgets
     * @throws BadFileException with every name and value that is wrong; nothing is then set
     */
    public OpenSession set(OpenSession open, Map<String, String> values) throws BadFileException {
        refuseWrong(open.session(), values);
        String name = "Set " + String.join(", ", values.keySet());
        return desk.edit(open, new Edit(name, session -> applied(session, values)));
    }

    private Session applied(Session session, Map<String, String> values) {
        Session next = session;
        for (Map.Entry<String, String> value : new LinkedHashMap<>(values).entrySet()) {
            next = applied(next, value.getKey(), value.getValue());
        }
        return next;
    }

    private Session applied(Session session, String name, String text) {
        if (name.equals(STANDARD)) {
            return session.withStandard(text.isBlank() ? Standard.SAE_J1349 : Standard.of(text.strip()));
        }
        if (name.equals(SELLER_FIGURE)) {
            return session.withStated(text.isBlank() ? Optional.empty() : Optional.of(stated(text)));
        }
        Fact fact = Fact.named(name)
                .orElseThrow(() ->
                        new IllegalArgumentException(name + ": this name is not known; the names are " + names()));
        return fact == Fact.BAND
                ? new BandChange(text).on(session, LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES))
                : session.withCar(session.car().with(fact, text));
    }

    private static StatedFigure stated(String text) {
        try {
            return StatedFigure.parse(text);
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException(SELLER_FIGURE + ": " + wrong.getMessage(), wrong);
        }
    }

    private void refuseWrong(Session session, Map<String, String> values) throws BadFileException {
        List<Problem> problems = new ArrayList<>();
        values.forEach((name, text) -> {
            try {
                applied(session, name, text);
            } catch (IllegalArgumentException wrong) {
                problems.add(new Problem("set", "", String.valueOf(wrong.getMessage()) + "."));
            }
        });
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
    }

    private static String names() {
        return Stream.concat(Arrays.stream(Fact.values()).map(Fact::key), Stream.of(STANDARD, SELLER_FIGURE))
                .collect(Collectors.joining(", "));
    }
}
