package fitworthy.figures.order;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Working days, Monday to Friday (common practice of the trade in Australia, the United Kingdom and the United States).
 * Public holidays and a workshop's own closing days are not known, so a date found here is the earliest.
 */
public final class WorkDays {

    private static final int DAYS_A_WEEK = 7;
    private static final int WORKING_DAYS_A_WEEK = 5;

    /** Working days as a share of all days. */
    public static final double SHARE = (double) WORKING_DAYS_A_WEEK / DAYS_A_WEEK;

    private WorkDays() {}

    /** How many working days there are from {@code first} on, before {@code day}; none where it is no later. */
    public static long before(LocalDate first, LocalDate day) {
        long days = Math.max(0, ChronoUnit.DAYS.between(first, day));
        long working = days / DAYS_A_WEEK * WORKING_DAYS_A_WEEK;
        for (long left = days % DAYS_A_WEEK; left > 0; left--) {
            working += isWorking(first.plusDays(left - 1)) ? 1 : 0;
        }
        return working;
    }

    /** The working day, from {@code first} on, that has {@code count} of them before it. */
    public static LocalDate after(LocalDate first, long count) {
        LocalDate day = toWorking(first).plusWeeks(count / WORKING_DAYS_A_WEEK);
        for (long left = count % WORKING_DAYS_A_WEEK; left > 0; left--) {
            day = toWorking(day.plusDays(1));
        }
        return day;
    }

    /** The working day that has {@code count} of them from it on before {@code day}; the latest such, and no less than one. */
    static LocalDate ahead(LocalDate day, long count) {
        LocalDate earlier = day.minusWeeks(count / WORKING_DAYS_A_WEEK);
        for (long left = count % WORKING_DAYS_A_WEEK; left > 0; left--) {
            earlier = earlier.minusDays(1);
            while (!isWorking(earlier)) {
                earlier = earlier.minusDays(1);
            }
        }
        return earlier;
    }

    /** The last working day that is no later. */
    static LocalDate until(LocalDate day) {
        return isWorking(day) ? day : until(day.minusDays(1));
    }

    private static LocalDate toWorking(LocalDate day) {
        return isWorking(day) ? day : toWorking(day.plusDays(1));
    }

    private static boolean isWorking(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }
}
