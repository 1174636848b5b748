package fitworthy.advice.remedy;

import fitworthy.advice.Outcome.Finding;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.stream.Stream;

/** Where a field stands that a finding is about; none where the sheet does not give it. */
interface Where {

    List<String> paths(Node.Mapping tree, Sheet sheet, Finding finding);

    static Where at(String... paths) {
        return (tree, sheet, finding) -> Stream.of(paths)
                .map(path -> path.replace("{subject}", finding.judged().subject()))
                .filter(path -> path(path, finding).in(tree) != null)
                .limit(1)
                .toList();
    }

    /** A field of every planned part of a kind that gives it, or else of the vehicle. */
    static Where of(Fitment.Kind kind, String vehicle, String field) {
        return (tree, sheet, finding) -> {
            List<String> planned = sheet.planned().fitments().stream()
                    .filter(part -> part.kind() == kind)
                    .map(part -> "fitments." + part.name() + "." + field)
                    .filter(path -> NodePath.parse(path).in(tree) != null)
                    .toList();
            return !planned.isEmpty()
                    ? planned
                    : NodePath.parse(vehicle + "." + field).in(tree) == null
                            ? List.of()
                            : List.of(vehicle + "." + field);
        };
    }

    static NodePath path(String path, Finding finding) {
        String subject = finding.judged().subject();
        return subject.contains(".")
                ? NodePath.parse(path.replace(subject, "SUBJECT")).renamed("SUBJECT", subject)
                : NodePath.parse(path);
    }
}
