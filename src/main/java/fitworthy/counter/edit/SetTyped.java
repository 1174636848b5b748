package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.source.FaultsException;
import fitworthy.source.Words;
import java.util.Optional;

/** Puts what a person typed into a field, unless it could be either of two figures. */
public record SetTyped(SetValue set) implements Change {

    /** As {@link SetValue}. */
    public SetTyped(String path, String value) {
        this(new SetValue(path, value));
    }

    @Override
    public String label() {
        return set.label();
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        Optional<String> either = QuantityText.eitherOf(Mark.read(set.value()).text());
        if (either.isPresent()) {
            throw Spot.refused(
                    now, set.path(), "'" + Words.shortened(set.value(), 60) + "' could be either of two", either.get());
        }
        return set.in(now);
    }
}
