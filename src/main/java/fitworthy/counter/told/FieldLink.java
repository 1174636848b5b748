package fitworthy.counter.told;

import fitworthy.counter.desk.Answer;
import fitworthy.source.NodePath;
import fitworthy.usual.Filling;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/**
 * Leads to a field in the plan.
 *
 * @param path of the field, by the names of parts
 * @param anchor the id of its element there
 */
public record FieldLink(String path, String anchor) {

    static FieldLink of(Answer now, String path) {
        NodePath at = NodePath.find(path, Filling.withItems(now.whole()));
        return new FieldLink(path, at == null ? "plan" : anchor(at));
    }

    /** As the plan names its fields: by the positions of items. */
    private static String anchor(NodePath at) {
        return at.steps().stream()
                .map(step -> URLEncoder.encode(step.toString(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("_", "f-", ""))
                .replaceAll("[^A-Za-z0-9_-]", "-");
    }
}
