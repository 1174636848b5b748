package fitworthy.figures.order;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Working days counted from the sheet's day on, as days of the calendar and back. Days of the calendar are in h from the
 * sheet's day on, the unit of lead times inside.
 *
 * @param first the sheet's day
 */
record WorkCalendar(LocalDate first) {

    /** Hours of a day. */
    static final double DAY = Dimension.size("days");

    /** What is left of sums of fractions of a day. */
    private static final double NOTHING = 1e-6;

    /** A day of the calendar. */
    Figure hours(LocalDate day) {
        return Figure.of(ChronoUnit.DAYS.between(first, day) * DAY, 0);
    }

    private Figure hours(Figure from, LocalDate day) {
        return from.missingWith(Figure.ZERO, Figure.of(hours(day).value(), from.tolerance() / WorkDays.SHARE * DAY));
    }

    /** The day of that; null where it is not known. */
    LocalDate day(Figure hours) {
        return hours.known() ? first.plusDays(Math.round(hours.value() / DAY)) : null;
    }

    /** The day of the calendar so many days after the sheet's. */
    LocalDate day(long days) {
        return first.plusDays(days);
    }

    /** The first day on which work that starts after so many working days can go on. */
    Figure firstDay(Figure start) {
        return hours(start, WorkDays.after(first, (long)
                Math.floor(start.or(Figure.ZERO).value() + NOTHING)));
    }

    /**
     * The last day of work. What takes no time, as what only has to be aboard, is done on the day it is there and not the
     * day before.
     */
    Figure lastDay(Figure start, Figure end) {
        long whole = (long) Math.ceil(end.or(Figure.ZERO).value() - NOTHING);
        return firstDay(start).most(hours(end, WorkDays.after(first, Math.max(0, whole - 1))));
    }

    /** Working days before a day. */
    Figure before(LocalDate day) {
        return Figure.of(WorkDays.before(first, day), 0);
    }

    /** Working days to the end of a day. */
    Figure to(LocalDate day) {
        return before(day.plusDays(1));
    }

    /** Days of the calendar until a part comes that takes so long, in whole ones; none where that is not known. */
    static long days(Figure lead) {
        return (long) Math.ceil(lead.or(Figure.ZERO).value() / DAY - NOTHING);
    }

    /** Working days until then: a part can be fitted on the day it arrives. */
    Figure arrival(Figure lead) {
        return lead.missingWith(
                Figure.ZERO,
                Figure.of(WorkDays.before(first, day(days(lead))), lead.tolerance() / DAY * WorkDays.SHARE));
    }
}
