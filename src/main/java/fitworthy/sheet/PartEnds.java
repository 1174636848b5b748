package fitworthy.sheet;

import fitworthy.schema.ChoiceWords;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** At which ends of the vehicle a part is that has to say so, such as springs. */
final class PartEnds {

    private static final List<String> BOTH = ChoiceWords.of(VehicleEnd.class);

    private PartEnds() {}

    /**
     * The end that the name of a part says, else both but for what another part of its kind takes by name; one without a
     * name where the kind has none.
     *
     * @param others the names of what is planned of its kind, itself among it
     */
    static List<String> of(String name, Kind kind, List<String> others) {
        if (!has(kind)) {
            return List.of("");
        }
        List<String> said = named(name);
        if (!said.isEmpty()) {
            return said;
        }
        List<String> ends = new ArrayList<>(BOTH);
        others.forEach(other -> ends.removeAll(named(other)));
        return ends.isEmpty() ? BOTH : ends;
    }

    static boolean has(Kind kind) {
        return RecordSchema.of(kind.details()).fields().stream()
                .anyMatch(field -> field.description().needed() && field.type() == VehicleEnd.class);
    }

    static List<String> named(String name) {
        return BOTH.stream()
                .filter(end -> name.toLowerCase(Locale.ROOT).contains(end))
                .toList();
    }
}
