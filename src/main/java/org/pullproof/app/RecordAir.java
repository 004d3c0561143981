package org.pullproof.app;

import org.pullproof.car.Fact;
import org.pullproof.dyno.DynoDays;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.weather.AirReading;

/** Keeps a reading of the air with its day, in the form it was typed in; a reading of the same time is replaced. */
public final class RecordAir {
    /**
     * @param open the session with the reading
     * @param told what follows from it
     */
    public record Outcome(OpenSession open, ReadAir.Told told) {}

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
        Session now = open.session();
        ReadAir.Told told = readAir.told(reading.air(), now.car().quantity(Fact.ELEVATION), now.standard());
        Edit edit = new Edit("Record air", session -> session.withDays(DynoDays.with(session.days(), reading)));
        return new Outcome(desk.edit(open, edit), told);
    }
}
