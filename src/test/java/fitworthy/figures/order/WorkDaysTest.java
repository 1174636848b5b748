package fitworthy.figures.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Against the calendar: 25 November 2026 is a Wednesday. */
class WorkDaysTest {

    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate SATURDAY = LocalDate.of(2026, 11, 28);

    @Test
    void theWeekendIsSkipped() {
        assertEquals(2, WorkDays.before(WEDNESDAY, LocalDate.of(2026, 11, 27)));
        assertEquals(3, WorkDays.before(WEDNESDAY, SATURDAY));
        assertEquals(3, WorkDays.before(WEDNESDAY, LocalDate.of(2026, 11, 30)));
        assertEquals(LocalDate.of(2026, 11, 30), WorkDays.after(WEDNESDAY, 3));
    }

    @Test
    void workWantedOnASaturdayBeginsOnMonday() {
        assertEquals(LocalDate.of(2026, 11, 30), WorkDays.after(SATURDAY, 0));
        assertEquals(0, WorkDays.before(SATURDAY, LocalDate.of(2026, 11, 30)));
    }

    @Test
    void whoOrdersByASundayOrdersOnFriday() {
        LocalDate friday = SATURDAY.minusDays(1);
        assertEquals(friday, WorkDays.until(friday));
        assertEquals(friday, WorkDays.until(SATURDAY));
        assertEquals(friday, WorkDays.until(SATURDAY.plusDays(1)));
        assertEquals(SATURDAY.plusDays(2), WorkDays.until(SATURDAY.plusDays(2)));
    }

    @Test
    void aDayInThePastHasNoneBeforeIt() {
        assertEquals(0, WorkDays.before(WEDNESDAY, WEDNESDAY.minusDays(9)));
    }

    /** 25 December 2026 and 1 January 2027 are Fridays. */
    @Test
    void nobodyWorksOnTheTwoDaysThatEveryRegionCloses() {
        LocalDate christmasEve = LocalDate.of(2026, 12, 24);
        assertEquals(1, WorkDays.before(christmasEve, LocalDate.of(2026, 12, 28)));
        assertEquals(LocalDate.of(2026, 12, 28), WorkDays.after(christmasEve, 1));
        assertEquals(LocalDate.of(2027, 1, 4), WorkDays.after(LocalDate.of(2027, 1, 1), 0));
        assertEquals(christmasEve, WorkDays.until(LocalDate.of(2026, 12, 25)));
        assertEquals(christmasEve, WorkDays.ahead(LocalDate.of(2026, 12, 28), 1));
        assertEquals(LocalDate.of(2026, 12, 31), WorkDays.ahead(LocalDate.of(2027, 1, 4), 1));
    }

    /** Those of 2027 and 2028 are Saturdays. */
    @Test
    void aDayOffOnAWeekendTakesNoWorkingDay() {
        assertEquals(5, WorkDays.before(LocalDate.of(2027, 12, 24), LocalDate.of(2027, 12, 31)));
    }

    /** The calendar of 2027 has 52 weeks and a Friday: it begins and ends on one, and the first is a holiday. */
    @Test
    void theYear2027Has260WorkingDays() {
        assertEquals(260, WorkDays.before(LocalDate.of(2027, 1, 1), LocalDate.of(2028, 1, 1)));
    }

    @Test
    void countingThereAndBackEndsOnTheSameDay() {
        for (int count = 0; count < 400; count++) {
            for (int begin = 0; begin < 7; begin++) {
                LocalDate first = WEDNESDAY.plusDays(begin);
                assertEquals(count, WorkDays.before(first, WorkDays.after(first, count)));
            }
        }
    }
}
