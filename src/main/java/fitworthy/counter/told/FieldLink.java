package fitworthy.counter.told;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.edit.Labels;
import fitworthy.counter.page.FieldPath;
import fitworthy.source.NodePath;
import fitworthy.usual.Filling;

/**
 * Leads to a field in the plan.
 *
 * @param path of the field, by the names of parts
 * @param anchor the id of its element there
 */
public record FieldLink(String path, String anchor) {

    static FieldLink of(Answer now, String path) {
        NodePath at = NodePath.find(path, Filling.withItems(now.whole()));
        return new FieldLink(path, at == null ? "plan" : FieldPath.id(at));
    }

    /** The field as a person would say it. */
    public String words() {
        return Labels.field(path);
    }
}
