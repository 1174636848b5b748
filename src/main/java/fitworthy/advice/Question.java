package fitworthy.advice;

import fitworthy.book.Party;
import fitworthy.quantity.Missing;
import java.util.List;

/**
 * Something that a person can be asked for, since checks wait for it or rest on a guess of it.
 *
 * @param figure what is asked for, with the checks that wait for it or rest on it
 * @param state what the sheet has of it
 * @param turns the checks that the answer can turn: all that wait for it; of those that rest on a guess the ones that
 *     come out otherwise within its spread
 */
public record Question(MissingFigure figure, State state, Stakes turns) {

    /** What a sheet has of a figure that is asked for. */
    public enum State {
        MISSING,
        ASKED,
        GUESSED
    }

    /** The question for what is missing. */
    public static Question missing(MissingFigure figure) {
        return new Question(figure, figure.missing().asked() ? State.ASKED : State.MISSING, figure.stakes());
    }

    static Question guessed(MissingFigure figure, Stakes turns) {
        return new Question(figure, State.GUESSED, turns);
    }

    /** The paths of its fields, by the names of parts; several where parts lack the same. */
    public List<String> paths() {
        return figure.fields().stream().map(Missing::path).toList();
    }

    /** Whom to ask. */
    public Party ask() {
        return Finder.of(figure.missing());
    }
}
