package org.pullproof.app;

import java.util.HashSet;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.WireRecord;

/** Keeps what is known of the plug wires, and how they stand around the cap. */
public final class RecordWires {
    private final SessionDesk desk;

    public RecordWires(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if the engine has no such cylinder
     */
    public OpenSession record(OpenSession open, WireRecord wire) throws BadFileException {
        return desk.edit(open, new Edit("Record wire, cylinder " + wire.cylinder(), session -> {
            session.profile().requireCylinder(wire.cylinder());
            return session.withTuneUp(session.tuneUp().withWire(wire));
        }));
    }

    /**
     * @param cylinders around the cap in the direction the rotor turns; empty forgets it
     * @throws IllegalArgumentException with a sentence unless each cylinder stands there once, and there is a cap
     */
    public OpenSession cap(OpenSession open, List<Integer> cylinders) throws BadFileException {
        return desk.edit(open, new Edit("Record the cap", session -> capped(session, cylinders)));
    }

    private static Session capped(Session session, List<Integer> cylinders) {
        List<Integer> order = session.profile().firing().cylinders();
        boolean whole = cylinders.size() == order.size() && new HashSet<>(cylinders).equals(new HashSet<>(order));
        if (!cylinders.isEmpty() && !whole) {
            throw new IllegalArgumentException("The cap of this engine has each of the cylinders 1 to " + order.size()
                    + " once, read around it in the direction the rotor turns; was " + cylinders);
        }
        return session.withTuneUp(session.tuneUp().withCapOrder(cylinders));
    }
}
