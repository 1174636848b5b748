package fitworthy.book;

import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.List;
import java.util.stream.Collectors;

/** What every dated value of a book and every card must hold to: a region that there is, a grade, and its sources. */
final class Grounds {

    /** Gets what is wrong. @param path the way to where it stands, from what was looked at */
    interface Told {
        void fault(NodePath path, String problem, String mend);
    }

    private final BookParts parts;

    Grounds(BookParts parts) {
        this.parts = parts;
    }

    void region(String region, Told told) {
        if (parts.lackRegion(region)) {
            told.fault(
                    NodePath.of("region"),
                    "'" + region + "' is not a region"
                            + Words.suggestion(region, parts.regions().keySet()),
                    String.join(", ", parts.regions().keySet()));
        }
    }

    void sources(Basis basis, List<String> cited, Told told) {
        if (basis == Basis.HOUSE || basis == Basis.ELSEWHERE) {
            told.fault(
                    NodePath.of("basis"),
                    "rests on the word of a shop",
                    "another basis; a shop sets its values in a file of its own");
        }
        if (cited.isEmpty() && (basis == Basis.PUBLISHED || basis == Basis.PUBLISHED_SECONDHAND)) {
            told.fault(
                    NodePath.of("basis"),
                    "is called " + Words.hyphenated(basis.name()) + " but cites no source",
                    "sources: [an id of sources.yaml], or another basis");
        }
        if (basis == Basis.PUBLISHED && !cited.isEmpty() && cited.stream().noneMatch(this::mayBearOut)) {
            told.fault(
                    NodePath.of("sources"),
                    "is called published but cites only what tells of a text: "
                            + cited.stream().map(this::kind).distinct().collect(Collectors.joining(", ")),
                    "basis: published-secondhand; or cite the text itself, of kind law, standard, guidance, maker or textbook");
        }
        for (int i = 0; i < cited.size(); i++) {
            if (parts.lackSource(cited.get(i))) {
                told.fault(
                        NodePath.of("sources").to(i + 1),
                        "cites '" + cited.get(i) + "', which sources.yaml does not list"
                                + Words.suggestion(cited.get(i), parts.sources().keySet()),
                        "an entry '" + cited.get(i) + ":' in sources.yaml");
            }
        }
    }

    /** What cannot be read, or is not there, is told of by itself. */
    private boolean mayBearOut(String id) {
        Source source = parts.sources().get(id);
        return source == null || !source.kind().known() || source.kind().value().bearsOut();
    }

    private String kind(String id) {
        return Words.hyphenated(parts.sources().get(id).kind().value().name());
    }
}
