package org.pullproof.ui.dynoday;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import org.pullproof.car.Fact;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;

/** The air of a day: what is being typed and what it would do to the figures, and the last reading with its age. */
public final class AirViewModel {
    private static final DateTimeFormatter CLOCK_TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ROOT);

    /** Hp or kW, to show a factor with before there is a pull. */
    private static final double ROUND_POWER = 100;

    private final SessionViewModel model;
    private final DynoActs acts;
    private final Correction correction;
    private final Clock clock;
    private final AirEntry entry;
    private final BooleanProperty typing = new SimpleBooleanProperty(false);

    public AirViewModel(SessionViewModel model, DynoActs acts, Correction correction, AirCheck check, Clock clock) {
        this.model = model;
        this.acts = acts;
        this.correction = correction;
        this.clock = clock;
        this.entry = new AirEntry(check, this::garageElevation);
    }

    /** What is being typed. */
    public AirEntry entry() {
        return entry;
    }

    Figures figures() {
        return model.appraisal().figures();
    }

    /** How high the garage lies, if told. */
    public Optional<Quantity> garageElevation() {
        return model.session().car().told(Fact.ELEVATION).map(text -> Quantity.parse(text, Dimension.LENGTH));
    }

    /** Whether the air is being typed, with the whole sheet for it. */
    public ReadOnlyBooleanProperty typingProperty() {
        return typing;
    }

    /** Opens the form of the air. */
    public void read() {
        typing.set(true);
    }

    /** Leaves the form; what is typed in it stays. */
    public void leave() {
        typing.set(false);
    }

    /**
     * Keeps the air typed as read now.
     *
     * @throws IllegalArgumentException with a sentence if a part is missing or there is no such air
     */
    public void use() {
        AirReading reading = entry.reading(clock);
        typing.set(false);
        model.act(acts.recordAir(reading));
    }

    /** What the air being typed would do to the figures: to the last pull that counts, else to a round power. */
    AirEffect effect() {
        return AirEffect.of(
                entry,
                correction,
                model.session().standard(),
                lastPeakWatt().orElse(figures().unit(Shown.POWER).toSi(ROUND_POWER)),
                model.session().profile().charged(),
                figures());
    }

    private Optional<Double> lastPeakWatt() {
        return model.appraisal().dyno().pulls().stream()
                .filter(pull -> !pull.excluded())
                .reduce((first, last) -> last)
                .map(pull -> pull.peakMeasuredKw() * 1e3);
    }

    /** The last reading of the air, if there is one. */
    public Optional<AirReading> latest() {
        return model.appraisal().dyno().latestAir();
    }

    /** The factor of what is typed, in words: "1.033 ± 0.003 SAE J1349, in range"; a dash until all of it stands. */
    public String factorWords() {
        return entry.air()
                .map(typed -> words(correction.factor(model.session().standard(), typed)))
                .orElse("–");
    }

    /** The factor of the last reading, in the same words. */
    public String latestFactorWords() {
        return model.appraisal().dyno().latestFactor().map(AirViewModel::words).orElse("–");
    }

    private static String words(Factor factor) {
        return Figures.number(factor.value(), 4) + " ± " + Figures.number(factor.uncertainty(), 4) + " "
                + factor.standard().words() + (factor.withinRange() ? ", in range" : ", outside the standard's range");
    }

    /** When the last reading was made: "typed 13:40, 22 min ago". */
    public String age() {
        return latest().map(AirReading::time).map(this::agedSince).orElse("not read yet");
    }

    private String agedSince(LocalDateTime time) {
        Duration old = Duration.between(time, LocalDateTime.now(clock));
        boolean today = time.toLocalDate().equals(LocalDateTime.now(clock).toLocalDate());
        return today && !old.isNegative()
                ? "typed " + time.format(CLOCK_TIME) + ", " + old.toMinutes() + Figures.NO_BREAK_SPACE + "min ago"
                : "typed " + time.format(DAY_TIME);
    }

    /** Whether the last reading is of today and too old to pull with. */
    public boolean isOld() {
        LocalDateTime now = LocalDateTime.now(clock);
        return latest().map(AirReading::time)
                .filter(time -> time.toLocalDate().equals(now.toLocalDate()))
                .filter(time -> Duration.between(time, now).compareTo(AirReading.SERVES) > 0)
                .isPresent();
    }
}
