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
    private static final String LIFE = "life or fire hangs on it, and only a look at this very thing tells it";

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
                        "load-most",
                        "bars-least",
                        "bars-most",
                        "most-voltage",
                        "most-current",
                        "most-charge",
                        "most-discharge",
                        "most-heat",
                        "continuous",
                        "surge",
                        "reference-pressure")
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
                        "shown",
                        "towing-stated",
                        "rails-stated",
                        "hill-towing",
                        "ball-when-full",
                        "fixing-stated",
                        "tested",
                        "service-distance")
                .forEach(name -> NAMED.put(name, STATEMENT));
        List.of("certificate", "insurer-told", "warranty", "inspection", "registered", "seats", "kerb")
                .forEach(name -> NAMED.put(name, PAPERS));
        List.of(
                        "every-wheel-braked",
                        "chains",
                        "fixed",
                        "secured",
                        "battery-feed",
                        "cut-off",
                        "chemistry",
                        "section",
                        "earth",
                        "earthed",
                        "feed",
                        "baffled",
                        "clearance",
                        "breather",
                        "filler",
                        "exhaust-gap",
                        "shielded",
                        "emission-parts",
                        "outlet",
                        "over-outlet",
                        "mains-work",
                        "safety-switch",
                        "lid-sealed",
                        "known-dust-leak",
                        "sensors",
                        "assistance",
                        "help",
                        "plate-visible",
                        "lamps-visible",
                        "dazzles-driver",
                        "with-main-beam",
                        "lines-reach",
                        "alignment",
                        "lamp-aim",
                        "tree-strap",
                        "line-damper",
                        "lamps",
                        "plate",
                        "high-stop-lamp",
                        "cameras",
                        "blind-spot-lamps")
                .forEach(name -> NAMED.put(name, LIFE));
        List.of("done", "keep", "assume-usual", "restricted", "permanent", "take", "in-series", "strings")
                .forEach(name -> NAMED.put(name, PLAN));
    }

    /** Answers that have a check made or asked, of fields whose other answers would let it pass; by the way to the field. */
    private static final Map<String, String> CAREFUL = Map.of(
            "airbags", "yes",
            "stability-control", "yes",
            "brake-controller", "no",
            "brakes", "none",
            "vented-outside", "no",
            "seen-over", "no",
            "view.mirrors.indicators", "yes",
            "indicators", "no",
            "speedometer-set", "no");

    private NeverUsual() {}

    /** Why an answer is never usual; nothing where it may be. @param path the way to the field that holds it */
    public static Optional<String> because(NodePath path, String answer) {
        return Optional.ofNullable(CAREFUL.get(path.toString()))
                .filter(careful -> !careful.equals(answer))
                .map(careful -> "only '" + careful + "' errs on the careful side");
    }

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
