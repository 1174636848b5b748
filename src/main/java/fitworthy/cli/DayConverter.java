package fitworthy.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day as typed. */
final class DayConverter implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("'" + typed + "' is not a date; right: 2026-11-25 (year-month-day)");
        }
    }
}
