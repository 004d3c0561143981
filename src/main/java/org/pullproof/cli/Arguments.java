package org.pullproof.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import org.pullproof.changes.RotatingPart;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.units.BadQuantityException;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Standard;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How quantities, money and times are typed on the command line; a bare number is refused with the units it could have. */
final class Arguments {
    private Arguments() {}

    /** Reads a quantity of one dimension. */
    private abstract static class OfDimension implements ITypeConverter<Quantity> {
        private final Dimension dimension;

        OfDimension(Dimension dimension) {
            this.dimension = dimension;
        }

        @Override
        public Quantity convert(String text) {
            try {
                return Quantity.parse(text, dimension);
            } catch (BadQuantityException wrong) {
                throw refused(wrong);
            }
        }
    }

    static final class PressureArgument extends OfDimension {
        PressureArgument() {
            super(Dimension.PRESSURE);
        }
    }

    static final class TemperatureArgument extends OfDimension {
        TemperatureArgument() {
            super(Dimension.TEMPERATURE);
        }
    }

    static final class LengthArgument extends OfDimension {
        LengthArgument() {
            super(Dimension.LENGTH);
        }
    }

    static final class PowerArgument extends OfDimension {
        PowerArgument() {
            super(Dimension.POWER);
        }
    }

    static final class ShareArgument extends OfDimension {
        ShareArgument() {
            super(Dimension.SHARE);
        }
    }

    static final class InertiaArgument extends OfDimension {
        InertiaArgument() {
            super(Dimension.INERTIA);
        }
    }

    static final class MassArgument extends OfDimension {
        MassArgument() {
            super(Dimension.MASS);
        }
    }

    static final class AngleArgument extends OfDimension {
        AngleArgument() {
            super(Dimension.ANGLE);
        }
    }

    static final class MoneyArgument implements ITypeConverter<Money> {
        @Override
        public Money convert(String text) {
            try {
                return Money.parse(text);
            } catch (BadQuantityException wrong) {
                throw refused(wrong);
            }
        }
    }

    static final class TimeArgument implements ITypeConverter<LocalDateTime> {
        @Override
        public LocalDateTime convert(String text) {
            try {
                return LocalDateTime.parse(text);
            } catch (DateTimeParseException wrong) {
                throw new TypeConversionException("\"" + text + "\" is not a time: write 2026-06-14T13:40.");
            }
        }
    }

    static final class DateArgument implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException wrong) {
                throw new TypeConversionException("\"" + text + "\" is not a date: write 2026-06-14.");
            }
        }
    }

    static final class StandardArgument implements ITypeConverter<Standard> {
        @Override
        public Standard convert(String text) {
            try {
                return Standard.of(text);
            } catch (IllegalArgumentException wrong) {
                throw refused(wrong);
            }
        }
    }

    static final class MetarArgument implements ITypeConverter<Metar> {
        @Override
        public Metar convert(String text) {
            try {
                return Metar.parse(text);
            } catch (IllegalArgumentException wrong) {
                throw refused(wrong);
            }
        }
    }

    static final class RotatingPartArgument implements ITypeConverter<RotatingPart> {
        @Override
        public RotatingPart convert(String text) {
            return RotatingPart.named(text)
                    .orElseThrow(() -> new TypeConversionException("\"" + text + "\" is no rotating part: write one of "
                            + String.join(", ", RotatingPart.keys()) + "."));
        }
    }

    static final class ColumnArgument implements ITypeConverter<ColumnChoice> {
        @Override
        public ColumnChoice convert(String text) {
            try {
                return ColumnChoice.parse(text);
            } catch (IllegalArgumentException wrong) {
                throw refused(wrong);
            }
        }
    }

    private static TypeConversionException refused(IllegalArgumentException wrong) {
        return new TypeConversionException(String.valueOf(wrong.getMessage()));
    }
}
