package fitworthy.learn;

import fitworthy.advice.View;
import fitworthy.batch.Input;
import fitworthy.batch.Refusal;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;

/**
 * What one sheet has to say of the masses of its parts, or why it cannot be used.
 *
 * @param sheet its file, with its line where the file holds many
 * @param content a digest of its text
 * @param weighed null where it cannot be used
 * @param faults why it cannot be used; empty where it can
 * @param ours whether that is a fault of the program
 */
public record SheetReadings(String sheet, String content, WeighedSheet weighed, List<Refusal> faults, boolean ours) {

    /** Looks at a sheet; never fails, so that one sheet cannot take the others with it. */
    public static SheetReadings of(View view, Input input) {
        List<Fault> faults = new ArrayList<>();
        String name = input.place().toString();
        try {
            String text = input.text(faults);
            return new SheetReadings(
                    name,
                    Digests.of(String.valueOf(text)),
                    WeighedSheet.of(
                            view.read(input.tree(text, faults), faults).sheet(),
                            view.book().tables()),
                    List.of(),
                    false);
        } catch (FaultsException e) {
            return new SheetReadings(name, "", null, Refusal.of(e.faults(), ""), false);
        } catch (RuntimeException e) {
            return new SheetReadings(name, "", null, Refusal.of(input, e), true);
        }
    }
}
