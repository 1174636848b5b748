package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What passenger tyres count for, by hand: two of index 98 carry 1500 kg, over 1.10 they count for 1363.6 kg (49 CFR
 * 571.110 S4.2.2.2).
 */
class PassengerTyresTest {

    private static final Figure CARRIED = Figure.of(1500);
    private static final Missing KIND =
            new Missing("tyres.passenger", "whether they are passenger tyres", "the sidewall");

    private static PassengerTyres of(Choice<YesNo> less) {
        return new PassengerTyres(less, Figure.of(1.1));
    }

    private static PassengerTyres open() {
        return of(Choice.missing(KIND));
    }

    @Test
    void passengerTyresCountForLess() {
        assertEquals(
                1363.636,
                of(Choice.yesNo(true)).counted(CARRIED, Figure.of(1600)).value(),
                0.001);
        assertFalse(of(Choice.yesNo(true)).countInFull());
    }

    @Test
    void othersCountInFullAndAllDoWhereTheLawHasNoDivisor() {
        assertEquals(CARRIED, of(Choice.yesNo(false)).counted(CARRIED, Figure.of(1400)));
        PassengerTyres elsewhere = new PassengerTyres(Choice.yesNo(true), Figure.missing(KIND));
        assertEquals(CARRIED, elsewhere.counted(CARRIED, Figure.of(1400)));
        assertTrue(elsewhere.countInFull());
    }

    @Test
    void whereTheKindIsOpenOnlyWhatLiesBetweenIsAsked() {
        assertEquals(1363.636, open().counted(CARRIED, Figure.of(1363)).value(), 0.001);
        assertEquals(List.of(KIND), open().counted(CARRIED, Figure.of(1364)).missing());
        assertEquals(List.of(KIND), open().counted(CARRIED, Figure.of(1500)).missing());
        assertEquals(CARRIED, open().counted(CARRIED, Figure.of(1501)));
    }

    /** 670 kg on one tyre ask for an index that carries 737 kg where it may be a passenger tyre. */
    @Test
    void theIndexIsForMoreThanTheLoadUnlessTheyCountInFull() {
        assertEquals(737, open().forIndex(Figure.of(670)).value(), 1e-9);
        assertEquals(737, of(Choice.yesNo(true)).forIndex(Figure.of(670)).value(), 1e-9);
        assertEquals(670, of(Choice.yesNo(false)).forIndex(Figure.of(670)).value());
    }

    @Test
    void theWorkingIsToldWhereTheyCountForLess() {
        PassengerTyres tyres = of(Choice.yesNo(true));
        Figure counted = tyres.counted(CARRIED, Figure.of(1400));
        assertEquals(
                List.of("counted = carried / divisor, carried = 1500 kg, divisor = 1.1"),
                tyres.working(CARRIED, counted).lines());
        assertEquals(List.of(), tyres.working(CARRIED, CARRIED).lines());
    }
}
