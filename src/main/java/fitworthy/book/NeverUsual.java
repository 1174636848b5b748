package fitworthy.book;

import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.source.NodePath;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is never usual, though a sheet may hold a guess there: what decides over life or papers stands on a plate, a
 * label or a paper of this very thing, and what another such thing bears says nothing of it.
 */
public final class NeverUsual {

    private static final String RATING = "a rating or a limit stands on its own plate or label";
    private static final String STATEMENT = "only its maker or an authority can state that";
    private static final String PAPERS = "it is told by the papers of this vehicle";
    private static final String PLAN = "it is for whoever plans it to say";

    /** Figures that are ratings by what they are, wherever they stand. */
    private static final Set<Plausible> RATED = EnumSet.of(
            Plausible.GVM,
            Plausible.GCM,
            Plausible.AXLE_LIMIT,
            Plausible.ROOF_LIMIT,
            Plausible.TOW_RATING,
            Plausible.COUPLING_FORCE,
            Plausible.WORKING_LIMIT,
            Plausible.STRENGTH,
            Plausible.PULL,
            Plausible.LOAD_INDEX,
            Plausible.WHEEL_RATING,
            Plausible.INSULATION);

    /** What is called like a rating and is none: how fine a filter is. */
    private static final Set<Plausible> MEASURED = EnumSet.of(Plausible.FILTER);

    /** Groups, with all that is in them. */
    private static final Set<String> RATED_GROUPS =
            Set.of("ratings", "plate", "coupling", "fuse", "far-fuse", "hold-down");

    /** Fields by their names. */
    private static final Map<String, String> NAMED = new HashMap<>();

    static {
        List.of(
                        "limit",
                        "rating",
                        "rated",
                        "gtm",
                        "rated-flow",
                        "rim-least",
                        "rim-most",
                        "speed-symbol",
                        "most-pressure",
                        "wading",
                        "load-least",
                        "load-most")
                .forEach(name -> NAMED.put(name, RATING));
        List.of(
                        "suits",
                        "airbag-statement",
                        "marked",
                        "approved",
                        "approved-as-mirror",
                        "approval",
                        "potable",
                        "fine-droplets",
                        "lithium-curve",
                        "cold-charging",
                        "breakaway",
                        "made-for",
                        "service-distance")
                .forEach(name -> NAMED.put(name, STATEMENT));
        List.of("certificate", "insurer-told", "warranty", "inspection", "registered", "seats", "kerb")
                .forEach(name -> NAMED.put(name, PAPERS));
        List.of("done", "keep", "assume-usual", "restricted", "permanent", "take")
                .forEach(name -> NAMED.put(name, PLAN));
    }

    private NeverUsual() {}

    /** Why a field's value is never usual; nothing where it may be. @param path the way to it */
    public static Optional<String> because(NodePath path, FieldSchema field) {
        boolean winchFeed = field.name().equals("feed") && field.content() == FieldSchema.Content.FIGURE;
        if (winchFeed
                || RATED.contains(field.description().within())
                || path.above().steps().stream().anyMatch(step -> RATED_GROUPS.contains(step.toString()))) {
            return Optional.of(RATING);
        }
        return MEASURED.contains(field.description().within())
                ? Optional.empty()
                : Optional.ofNullable(NAMED.get(field.name()));
    }
}
