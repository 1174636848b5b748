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

    /** The calendar of 2027 has 52 weeks and a Friday: it begins and ends on one. */
    @Test
    void theYear2027Has261WorkingDays() {
        assertEquals(261, WorkDays.before(LocalDate.of(2027, 1, 1), LocalDate.of(2028, 1, 1)));
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
