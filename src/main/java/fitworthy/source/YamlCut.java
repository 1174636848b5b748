package fitworthy.source;

import fitworthy.source.YamlPlaces.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A text out of which a field or an item is taken, with the comments that are its own: behind it on its line, and
 * straight above it. Whether it reads back is for the caller to see.
 */
final class YamlCut {

    private final YamlPlaces places;
    private final String text;

    private YamlCut(YamlPlaces places) {
        this.places = places;
        this.text = places.text();
    }

    static Optional<String> without(String text, NodePath path) {
        try {
            YamlPlaces places = new YamlPlaces(text);
            Spot spot = places.find(path);
            if (spot == null) {
                return Optional.empty();
            }
            YamlCut cut = new YamlCut(places);
            return spot.above().isFlow()
                    ? Optional.of(cut.fromBraces(spot))
                    : spot.above().entries().size() == 1
                            ? YamlText.exchanged(text, path.above(), nothing(spot.above()), false)
                            : Optional.of(cut.lines(spot));
        } catch (YAMLException e) {
            return Optional.empty();
        }
    }

    private static Node nothing(Spot group) {
        Place nowhere = Place.of("");
        return group.node() instanceof SequenceNode
                ? new Node.Listing(nowhere, List.of())
                : new Node.Mapping(nowhere, Map.of());
    }

    /** An entry that has lines of its own, but for the dash before the first of an item. */
    private String lines(Spot spot) {
        int begin = places.begin(spot);
        int end = places.lineEnd(places.end(spot));
        if (places.isBlank(places.lineBegin(begin), begin)) {
            return withoutLines(withCommentsAbove(begin), end);
        }
        int next = places.begin(spot.above().at(spot.index() + 1));
        return places.spliced(begin, places.isBlank(end, next) ? next : end, "");
    }

    /** Without whole lines. @param begin in the first @param end that of the last */
    private String withoutLines(int begin, int end) {
        int behind = text.indexOf('\n', end) + 1;
        int from = places.lineBegin(begin);
        return behind > 0 ? places.spliced(from, behind, "") : places.spliced(lineBefore(from), end, "");
    }

    private int lineBefore(int lineBegin) {
        return lineBegin == 0 ? 0 : places.lineEnd(places.lineBegin(lineBegin - 1));
    }

    /** Where the comments straight above an entry begin; what stands at the top of a file is said of all of it. */
    private int withCommentsAbove(int begin) {
        int line = places.lineBegin(begin);
        String indent = text.substring(line, begin);
        int from = line;
        while (from > 0 && text.startsWith(indent + "#", places.lineBegin(from - 1))) {
            from = places.lineBegin(from - 1);
        }
        return from == 0 ? line : from;
    }

    private String fromBraces(Spot spot) {
        Spot group = spot.above();
        int count = group.entries().size();
        int close = places.at(group.node().getEndMark()) - 1;
        if (count == 1) {
            return places.spliced(places.at(group.node().getStartMark()) + 1, close, "");
        }
        boolean last = spot.index() == count - 1;
        int begin = places.begin(spot);
        int end = places.end(spot);
        int next = last ? close : places.begin(group.at(spot.index() + 1));
        int comma = comma(end, next);
        int behind = behindComment(comma < 0 ? end : comma + 1);
        if (places.isBlank(places.lineBegin(begin), begin) && places.isBlank(behind, places.lineEnd(behind))) {
            String cut = withoutLines(withCommentsAbove(begin), behind);
            int before = last && comma < 0 ? comma(places.end(group.at(spot.index() - 1)), begin) : -1;
            return before < 0 ? cut : cut.substring(0, before) + cut.substring(before + 1);
        }
        if (!last) {
            boolean endsLine = text.substring(behind, next).contains("\n");
            return spot.index() > 0 && endsLine
                    ? places.spliced(behindLast(begin), behind, "")
                    : places.spliced(begin, places.isBlank(behind, next) ? next : behind, "");
        }
        int before = places.end(group.at(spot.index() - 1));
        return places.isBlank(comma(before, begin) + 1, begin)
                ? places.spliced(before, end, "")
                : text.substring(0, comma(before, begin))
                        + text.substring(comma(before, begin) + 1, begin)
                        + text.substring(end);
    }

    /** Behind the last letter before a place. */
    private int behindLast(int place) {
        int behind = place;
        while (behind > 0 && Character.isWhitespace(text.charAt(behind - 1))) {
            behind--;
        }
        return behind;
    }

    /** Where a comma stands that is not within a comment; -1 where there is none. */
    private int comma(int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) == '#') {
                i = places.lineEnd(i);
            } else if (text.charAt(i) == ',') {
                return i;
            }
        }
        return -1;
    }

    /** Behind a comment that follows on the same line. */
    private int behindComment(int from) {
        int next = from;
        while (next < text.length() && (text.charAt(next) == ' ' || text.charAt(next) == '\t')) {
            next++;
        }
        return next < text.length() && text.charAt(next) == '#' ? places.lineEnd(next) : from;
    }
}
