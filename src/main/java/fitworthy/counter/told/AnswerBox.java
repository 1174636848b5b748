package fitworthy.counter.told;

import fitworthy.counter.edit.Labels;
import java.util.List;

/**
 * Where one types or chooses the answer for one field.
 *
 * @param id of its element
 * @param path of the field, by the names of parts
 * @param guess what the sheet or the book guesses, as it would be stated; empty where nothing is guessed
 * @param choices the answers there are; none where one types
 * @param unit what stands beside the box; empty where nothing does
 * @param example as a sheet would write it
 */
public record AnswerBox(String id, String path, String guess, List<String> choices, String unit, String example) {

    /** The field as a person would say it. */
    public String words() {
        return Labels.field(path);
    }
}
