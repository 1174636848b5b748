package fitworthy.advice.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How each remedy that names a figure, or the field for what something stands in, is done on a sheet, by rule; and which figures are told and not to be done. Each
 * topic's remedies stand in a class of their own.
 */
public final class RemedyTable {

    /** Why most figures that are only told are not to be done. */
    static final String LEFT_OR_USUAL =
            "it names what is left, what is usual or what comes of it, and asks to weigh, to look or to ask";

    private static final RemedyTable BOOK = new RemedyTable();

    private final Map<String, List<Doing>> doings = new TreeMap<>();
    private final Map<String, String> onlyTold = new TreeMap<>();

    private RemedyTable() {
        BodyRemedies.into(this);
        ElectricalRemedies.into(this);
        SightRemedies.into(this);
        LiquidRemedies.into(this);
        MassRemedies.into(this);
        RecoveryRemedies.into(this);
        TowingRemedies.into(this);
        TyreRemedies.into(this);
        OrderRemedies.into(this);
    }

    /** What each rule's remedy says to do. */
    public static Map<String, List<Doing>> doings() {
        return BOOK.doings;
    }

    /** Rules whose remedy tells figures and none to set something to, with the reason. */
    public static Map<String, String> onlyTold() {
        return BOOK.onlyTold;
    }

    void rule(String ids, Doing... does) {
        for (String id : ids.split(" ")) {
            doings.computeIfAbsent(id, none -> new ArrayList<>()).addAll(List.of(does));
        }
    }

    void told(String reason, String ids) {
        for (String id : ids.split(" ")) {
            onlyTold.put(id, reason);
        }
    }
}
