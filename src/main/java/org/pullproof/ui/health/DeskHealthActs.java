package org.pullproof.ui.health;

import java.util.List;
import org.pullproof.app.CorrectReading;
import org.pullproof.app.RecordReading;
import org.pullproof.app.RemoveReading;
import org.pullproof.health.Reading;
import org.pullproof.ui.shell.Act;

/** Keeps and removes readings on the disk. */
public final class DeskHealthActs implements HealthActs {
    private final RecordReading record;
    private final CorrectReading correct;
    private final RemoveReading remove;

    public DeskHealthActs(RecordReading record, CorrectReading correct, RemoveReading remove) {
        this.record = record;
        this.correct = correct;
        this.remove = remove;
    }

    @Override
    public Act record(Reading reading) {
        return open -> record.record(open, reading);
    }

    @Override
    public Act recordAll(List<Reading> readings) {
        return open -> record.recordAll(open, readings);
    }

    @Override
    public Act correct(Reading before, Reading after) {
        return open -> correct.correct(open, before, after);
    }

    @Override
    public Act remove(Reading reading) {
        return open -> remove.remove(open, reading);
    }
}
