package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import java.util.List;

/**
 * One value in a form.
 *
 * @param id of its box
 * @param path where it stands, see {@link FieldPath}
 * @param label what it is
 * @param help what more there is to say of it, and where a person finds it
 * @param box what it is typed or chosen in
 * @param value as it stands there, without its mark and the unit beside the box
 * @param unit beside the box, and taken where none is typed; empty where there is none
 * @param mark how it is meant; empty where nothing stands there
 * @param marks how it may be meant; none where it is stated or left out
 * @param choices its answers; none where it is typed
 * @param names the id of the list of names that it may have; empty where there is none
 * @param note what stands beside it: whence it comes, or what is usual
 */
public record Entry(
        String id,
        String path,
        String label,
        String help,
        Box box,
        String value,
        String unit,
        String mark,
        List<String> marks,
        List<String> choices,
        String names,
        String note) {

    /** In what a value is typed or chosen. */
    public enum Box {
        TEXT,
        CHOICE,
        /** The answer decides which further fields there are. */
        KIND
    }
}
