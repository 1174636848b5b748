package fitworthy.sheet;

import fitworthy.quantity.YesNo;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What was to stay and is left out all the same, because of the choices that a sheet takes. */
public final class Forgone {

    private Forgone() {}

    /** Its names: what is {@link #kept to be kept}, and what no choice leaves out but goes with the part that it stands in or on. */
    public static List<String> of(Sheet sheet) {
        return Stream.concat(kept(sheet).stream(), sheet.leftNowhere().stream())
                .distinct()
                .toList();
    }

    /** The parts left out that the customer will not do without, unless another part of the same kind is taken for them. */
    public static List<String> kept(Sheet sheet) {
        Set<String> out = sheet.leftOut();
        return sheet.fitments().stream()
                .filter(part -> part.keep().is(YesNo.YES)
                        && out.contains(part.name())
                        && sheet.options().stream().noneMatch(option -> isReplaced(part, option, sheet)))
                .map(Fitment::name)
                .toList();
    }

    private static boolean isReplaced(Fitment part, Sheet.Option option, Sheet sheet) {
        return option.choices().stream().anyMatch(choice -> choice.parts().contains(part.name()))
                && replaces(part, option.taken(), sheet);
    }

    /** Whether a choice has a part of the same kind. */
    public static boolean replaces(Fitment part, Sheet.Alternative choice, Sheet sheet) {
        return sheet.fitments().stream()
                .anyMatch(other -> other.kind() == part.kind() && choice.parts().contains(other.name()));
    }
}
