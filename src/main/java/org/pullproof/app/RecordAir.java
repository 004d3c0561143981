package org.pullproof.app;

import org.pullproof.car.Fact;
import org.pullproof.dyno.DynoDays;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.TypedAir;

/** Keeps a reading of the air with its day; a reading of the same time is replaced. */
public final class RecordAir {
    /**
     * @param open the session with the reading
     * @param summary what follows from it
     */
    public record Outcome(OpenSession open, AirSummary summary) {}

    private final SessionDesk desk;
    private final ReadAir readAir;

    public RecordAir(SessionDesk desk, ReadAir readAir) {
        this.desk = desk;
        this.readAir = readAir;
    }

    /**
     * @throws BadFileException with a sentence for each thing that cannot be, also against the car's elevation; nothing is then
     *     kept
     */
    public Outcome record(OpenSession open, AirReading reading) throws BadFileException {
        AirSummary summary =
                readAir.summary(TypedAir.of(reading), open.session().car().quantity(Fact.ELEVATION));
        Edit edit = new Edit("Record air", session -> session.withDays(DynoDays.with(session.days(), reading)));
        return new Outcome(desk.edit(open, edit), summary);
    }
}
