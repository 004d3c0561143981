package org.pullproof.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntSupplier;
import org.pullproof.changes.Change;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.Pull;
import org.pullproof.health.Reading;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.tuneup.PlugRecord;

/** Finds what one part of a document says of another part that is not there: a cylinder, a setup, a pull told twice. */
final class CrossReferences {
    private final String file;
    private final Session session;
    private final List<Problem> problems = new ArrayList<>();

    CrossReferences(String file, Session session) {
        this.file = file;
        this.session = session;
    }

    List<Problem> problems() {
        readings();
        plugs();
        setups();
        changes();
        days();
        return List.copyOf(problems);
    }

    private void tell(String place, String message) {
        problems.add(new Problem(file, place, message));
    }

    private void readings() {
        for (int i = 0; i < session.readings().size(); i++) {
            Reading reading = session.readings().get(i);
            String place = "readings[" + i + "].cylinder";
            reading.cylinder().ifPresent(number -> cylinder(place, () -> number));
        }
    }

    private void plugs() {
        List<PlugRecord> plugs = session.tuneUp().plugs();
        for (int i = 0; i < plugs.size(); i++) {
            cylinder("tuneUp.plugs[" + i + "].cylinder", plugs.get(i)::cylinder);
        }
    }

    private void cylinder(String place, IntSupplier number) {
        try {
            session.profile().requireCylinder(number.getAsInt());
        } catch (IllegalArgumentException missing) {
            tell(place, missing.getMessage() + ".");
        }
    }

    private void setups() {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < session.setups().size(); i++) {
            String id = session.setups().get(i).id();
            if (!ids.add(id)) {
                tell("setups[" + i + "].id", "\"" + id + "\" is the id of two setups; each has its own.");
            }
        }
    }

    private void changes() {
        for (int i = 0; i < session.changes().size(); i++) {
            Change change = session.changes().get(i);
            setup("changes[" + i + "].from", change.from());
            setup("changes[" + i + "].to", change.to());
        }
    }

    private void days() {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < session.days().size(); i++) {
            DynoDay day = session.days().get(i);
            for (int j = 0; j < day.pulls().size(); j++) {
                pull("days[" + i + "].pulls[" + j + "]", day.pulls().get(j), ids);
            }
        }
    }

    private void pull(String place, Pull pull, Set<String> ids) {
        setup(place + ".setup", pull.setup());
        if (!ids.add(pull.id())) {
            tell(place + ".number", "setup \"" + pull.setup() + "\" has two pulls with number " + pull.number() + ".");
        }
    }

    private void setup(String place, String id) {
        if (session.setup(id).isEmpty()) {
            tell(
                    place,
                    "\"" + id + "\" is the id of no setup; the setups are "
                            + String.join(
                                    ", ",
                                    session.setups().stream()
                                            .map(setup -> setup.id())
                                            .toList()) + ".");
        }
    }
}
