package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.Act;

/** Acts that keep readings in the document and write nothing to the disk. */
final class TypedReadings implements HealthActs {
    @Override
    public Act record(Reading reading) {
        return open -> UiFixture.after(open, new Edit("Record a reading", session -> {
            List<Reading> longer = new ArrayList<>(session.readings());
            longer.add(reading);
            return session.withReadings(longer);
        }));
    }

    @Override
    public Act recordAll(List<Reading> readings) {
        return open -> UiFixture.after(open, new Edit("Add readings", session -> {
            List<Reading> longer = new ArrayList<>(session.readings());
            longer.addAll(readings);
            return session.withReadings(longer);
        }));
    }

    @Override
    public Act correct(Reading before, Reading after) {
        return open -> UiFixture.after(open, new Edit("Correct a reading", session -> {
            List<Reading> changed = new ArrayList<>(session.readings());
            changed.set(changed.lastIndexOf(before), after);
            return session.withReadings(changed);
        }));
    }

    @Override
    public Act remove(Reading reading) {
        return open -> UiFixture.after(open, new Edit("Remove a reading", session -> {
            List<Reading> shorter = new ArrayList<>(session.readings());
            shorter.remove(reading);
            return session.withReadings(shorter);
        }));
    }
}
