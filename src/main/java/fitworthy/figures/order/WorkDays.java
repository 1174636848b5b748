package fitworthy.figures.order;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Set;

/**
 * Working days: Monday to Friday (common practice of the trade in Australia, the United Kingdom and the United States), but
 * for 25 December and 1 January, on which every region of the book is closed. Other public holidays, what stands in for
 * one on a weekend and a workshop's own closing days are not known, so a date found here is the earliest.
 */
public final class WorkDays {

    private static final int DAYS_A_WEEK = 7;
    private static final int WORKING_DAYS_A_WEEK = 5;

    private static final Set<MonthDay> CLOSED = Set.of(MonthDay.of(Month.DECEMBER, 25), MonthDay.of(Month.JANUARY, 1));

    /** Working days as a share of all days. */
    public static final double SHARE = (double) WORKING_DAYS_A_WEEK / DAYS_A_WEEK;

    private WorkDays() {}

    /** How many working days there are from {@code first} on, before {@code day}; none where it is no later. */
    public static long before(LocalDate first, LocalDate day) {
        long days = Math.max(0, ChronoUnit.DAYS.between(first, day));
        long working = days / DAYS_A_WEEK * WORKING_DAYS_A_WEEK;
        long sinceMonday = first.getDayOfWeek().getValue() - 1L;
        for (long left = days % DAYS_A_WEEK; left > 0; left--) {
            working += (sinceMonday + left - 1) % DAYS_A_WEEK < WORKING_DAYS_A_WEEK ? 1 : 0;
        }
        return working - closed(first, first.plusDays(days));
    }

    /** Weekdays on which all is closed, from {@code first} on, before {@code day}. */
    private static long closed(LocalDate first, LocalDate day) {
        long closed = 0;
        for (int year = first.getYear(); year <= day.getYear(); year++) {
            for (MonthDay each : CLOSED) {
                LocalDate date = each.atYear(year);
                closed += isWeekday(date) && !date.isBefore(first) && date.isBefore(day) ? 1 : 0;
            }
        }
        return closed;
    }

    /** The working day, from {@code first} on, that has {@code count} of them before it. */
    public static LocalDate after(LocalDate first, long count) {
        // No later than the day looked for: a week has no more working days.
        LocalDate day = first.plusWeeks(count / WORKING_DAYS_A_WEEK);
        long left = count - before(first, day);
        while (left > 0 || !isWorking(day)) {
            left -= isWorking(day) ? 1 : 0;
            day = day.plusDays(1);
        }
        return day;
    }

    /** The latest day that has {@code count} working days from it on before {@code day}. */
    static LocalDate ahead(LocalDate day, long count) {
        LocalDate earlier = day.minusWeeks(count / WORKING_DAYS_A_WEEK);
        long left = count - before(earlier, day);
        while (left > 0) {
            earlier = earlier.minusDays(1);
            left -= isWorking(earlier) ? 1 : 0;
        }
        return earlier;
    }

    /** The last working day that is no later. */
    static LocalDate until(LocalDate day) {
        return isWorking(day) ? day : until(day.minusDays(1));
    }

    private static boolean isWorking(LocalDate day) {
        return isWeekday(day) && !CLOSED.contains(MonthDay.from(day));
    }

    private static boolean isWeekday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }
}
