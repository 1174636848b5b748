package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Several answers as one: a yes or no that decides counts before what is not known. */
class ChoiceTest {

    private static final Choice<YesNo> YES = Choice.of(YesNo.YES);
    private static final Choice<YesNo> NO = Choice.of(YesNo.NO);
    private static final Choice<YesNo> LOCKS = Choice.missing(new Missing("box.locks", "whether it locks", "a look"));
    private static final Choice<YesNo> FIXED =
            Choice.missing(new Missing("box.fixed", "whether it is fixed", "a look"));

    @Test
    void everyIsNoAsSoonAsOneIsElseTheFirstThatIsNotKnown() {
        assertEquals(YES, Choice.every(YES, YES));
        assertEquals(NO, Choice.every(YES, LOCKS, NO));
        assertEquals(LOCKS, Choice.every(YES, LOCKS, FIXED));
    }

    @Test
    void anyIsYesAsSoonAsOneIsElseTheFirstByNameThatIsNotKnown() {
        assertEquals(Optional.of(YES), Choice.any(Stream.of(NO, LOCKS, YES)));
        assertEquals(Optional.of(FIXED), Choice.any(Stream.of(NO, LOCKS, FIXED)));
        assertEquals(Optional.of(NO), Choice.any(Stream.of(NO)));
        assertEquals(Optional.empty(), Choice.any(Stream.empty()));
    }
}
