package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** Keeps what is spent, and the options the owner entered or edited. */
public final class RecordMoney {
    private final SessionDesk desk;

    public RecordMoney(SessionDesk desk) {
        this.desk = desk;
    }

    /** Adds something that is paid. */
    public OpenSession spend(OpenSession open, Spending spending) throws BadFileException {
        return edit(open, "Spend on " + spending.what(), session -> {
            List<Spending> spent = new ArrayList<>(session.money().spent());
            spent.add(spending);
            return session.money().withSpent(spent);
        });
    }

    /**
     * Puts a spending in the place of another.
     *
     * @param place its place in the list, from 0
     */
    public OpenSession correct(OpenSession open, int place, Spending spending) throws BadFileException {
        return edit(open, "Correct " + spending.what(), session -> {
            List<Spending> spent = new ArrayList<>(session.money().spent());
            spent.set(place, spending);
            return session.money().withSpent(spent);
        });
    }

    /**
     * Takes a spending away.
     *
     * @param place its place in the list, from 0
     */
    public OpenSession removeSpending(OpenSession open, int place) throws BadFileException {
        return edit(open, "Remove a spending", session -> {
            List<Spending> spent = new ArrayList<>(session.money().spent());
            spent.remove(place);
            return session.money().withSpent(spent);
        });
    }

    /** Adds an option, or puts it in the place of the one of that name. */
    public OpenSession offer(OpenSession open, Option option) throws BadFileException {
        return offer(open, option, option.name());
    }

    /**
     * Puts an option in the place of the entered one it was made from.
     *
     * @param before name of that one; empty if it is new
     */
    public OpenSession offer(OpenSession open, Option option, String before) throws BadFileException {
        return edit(open, "Enter option " + option.name(), session -> {
            List<Option> options = without(session, option.name());
            options.removeIf(known -> known.name().equals(before));
            options.add(option);
            return session.money().withOptions(options);
        });
    }

    /** Removes an entered option; a default of that name shows again. */
    public OpenSession removeOption(OpenSession open, String name) throws BadFileException {
        return edit(open, "Remove option " + name, session -> session.money().withOptions(without(session, name)));
    }

    private interface Entry {
        MoneyBook of(Session session);
    }

    private OpenSession edit(OpenSession open, String name, Entry entry) throws BadFileException {
        return desk.edit(open, new Edit(name, session -> session.withMoney(entry.of(session))));
    }

    private static List<Option> without(Session session, String name) {
        List<Option> options = new ArrayList<>(session.money().options());
        options.removeIf(known -> known.name().equals(name));
        return options;
    }
}
