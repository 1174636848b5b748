package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.quantity.Missing;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is asked of several parts stands in one line, as long as the same checks wait for it. */
class MissingTogetherTest {

    private static NotAssessed waiting(String rule, Missing... missing) throws FaultsException {
        Judged any = Adviser.advise(Books.engine(), Sheets.plainWith("title: plain"))
                .met()
                .get(0)
                .judged();
        return new NotAssessed(
                new Judged(rule, any.card(), any.rule(), any.measure(), any.loadCase()), List.of(missing));
    }

    private static Missing mass(String part) {
        return new Missing(part, "its mass", "a scale");
    }

    @Test
    void theSameFigureOfTwoPartsIsAskedOnce() throws FaultsException {
        List<MissingFigure> figures = MissingFigure.of(List.of(
                waiting("mass.a", mass("fitments.Bar.mass"), mass("fitments.Winch.mass")),
                waiting("mass.b", mass("fitments.Winch.mass"), mass("fitments.Bar.mass"))));
        assertEquals(1, figures.size());
        assertEquals("fitments: mass of Bar, Winch", figures.get(0).field());
        assertEquals(Set.of("mass.a", "mass.b"), figures.get(0).rules());
        assertEquals("fitments.Bar.mass", figures.get(0).missing().path());
    }

    @Test
    void ofOnePartItGoesByItsPath() throws FaultsException {
        List<MissingFigure> figures =
                MissingFigure.of(List.of(waiting("mass.a", mass("tanks.Water.mass"), mass("trailer.mass"))));
        assertEquals(
                List.of("tanks.Water.mass", "trailer.mass"),
                figures.stream().map(MissingFigure::field).toList());
    }

    /** Other checks, another list or another meaning make another question; a path of two steps has no part. */
    @Test
    void differentQuestionsStayApart() throws FaultsException {
        assertEquals(
                List.of("fitments.Bar.mass", "fitments.Winch.mass"),
                MissingFigure.of(List.of(
                                waiting("mass.a", mass("fitments.Bar.mass")),
                                waiting("mass.b", mass("fitments.Winch.mass"))))
                        .stream()
                        .map(MissingFigure::field)
                        .toList());
        assertEquals(
                2,
                MissingFigure.of(List.of(waiting("mass.a", mass("fitments.Bar.mass"), mass("tanks.Bar.mass"))))
                        .size());
        assertEquals(
                2,
                MissingFigure.of(List.of(waiting("mass.a", mass("trailer.mass"), mass("vehicle.mass"))))
                        .size());
    }
}
