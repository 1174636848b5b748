package fitworthy.search;

import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.tyres.TyreRatingMeasures;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Tyres and wheels of the rating that findings name. Not where two tyres stand side by side: they have another index
 * there.
 */
final class RatingLevers {

    private final Node.Mapping root;
    private final Sheet planned;
    private final List<Measure> named;
    private final List<Lever> levers = new ArrayList<>();

    private RatingLevers(Node.Mapping root, Sheet planned, Collection<Finding> findings) {
        this.root = root;
        this.planned = planned;
        this.named = findings.stream()
                .filter(finding -> finding.judged().card().severity().value().compareTo(Severity.CHANGE) <= 0)
                .flatMap(finding -> finding.evidence().stream())
                .filter(Measure::isKnown)
                .toList();
    }

    /** @param planned the sheet with only the chosen parts in it */
    static List<Lever> of(Node.Mapping root, Sheet planned, Collection<Finding> findings) {
        RatingLevers ratings = new RatingLevers(root, planned, findings);
        ratings.add();
        return ratings.levers;
    }

    private void add() {
        most(TyreRatingMeasures.INDEX_NEEDED.name(), TyreRatingMeasures.AXLE_INDEX_NEEDED.name())
                .ifPresent(index -> add(
                        Fitment.Kind.TYRES,
                        "tyres",
                        "load-index",
                        whole(index),
                        "choose tyres of load index " + whole(index) + " or higher"));
        named.stream()
                .filter(measure -> measure.getName().equals(TyreRatingMeasures.SYMBOL_NEEDED.name()))
                .map(Measure::getWord)
                .filter(symbol -> !symbol.isEmpty())
                .findFirst()
                .ifPresent(symbol -> add(
                        Fitment.Kind.TYRES,
                        "tyres",
                        "speed-symbol",
                        symbol,
                        "choose tyres with the speed symbol " + symbol + " or a faster one"));
        most(TyreRatingMeasures.WHEEL_NEEDED.name(), TyreRatingMeasures.AXLE_WHEEL_NEEDED.name())
                .ifPresent(rating -> add(
                        Fitment.Kind.WHEELS,
                        "wheels",
                        "rating",
                        whole(rating) + " kg",
                        "choose wheels rated for " + whole(rating) + " kg or more each"));
    }

    private OptionalDouble most(String... kinds) {
        List<String> wanted = List.of(kinds);
        return named.stream()
                .filter(measure -> wanted.contains(measure.getName()))
                .mapToDouble(Measure::getValue)
                .max();
    }

    private static String whole(double rating) {
        return String.format(Locale.ROOT, "%.0f", Math.ceil(rating - 1e-6));
    }

    /** On the planned tyres or wheels where there is one set of them, else on the vehicle's own. */
    private void add(Fitment.Kind kind, String own, String field, String rating, String words) {
        List<String> parts = planned.fitments().stream()
                .filter(part -> part.kind() == kind)
                .map(Fitment::name)
                .toList();
        NodePath path =
                parts.size() == 1 ? NodePath.of("fitments", parts.get(0), field) : NodePath.of("vehicle", own, field);
        if (parts.size() <= 1 && path.in(root) != null) {
            levers.add(Lever.whole(own, new Change.Rate(path, rating, words)));
        }
    }
}
