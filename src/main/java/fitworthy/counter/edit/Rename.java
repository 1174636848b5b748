package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.TextEdit;

/**
 * Calls an item of a list otherwise, wherever the sheet names it. What is from the shelf is still taken by its name
 * there.
 *
 * @param path of the item, by the names of items in lists
 */
public record Rename(String path, String name) implements Change {

    @Override
    public String label() {
        return Labels.item(path) + " called " + name;
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        Answer made = now;
        for (NodePath named : References.to(Spot.of(path, now).path(), now.whole())) {
            made = renamed(named, made);
        }
        return new SetValue(path + ".name", name).in(made);
    }

    private Answer renamed(NodePath named, Answer now) throws FaultsException {
        Node old = named.in(now.tree());
        boolean isWord = named.last() instanceof NodePath.Item;
        boolean isFieldName = named.above().last().toString().equals("filled");
        if (isFieldName && old instanceof Node.Scalar value) {
            Answer without = SetValue.written(TextEdit.without(now.text(), named), now, path);
            return SetValue.written(TextEdit.with(without.text(), named.above().to(name), value.text()), now, path);
        }
        return isWord
                ? SetValue.written(
                        TextEdit.exchanged(now.text(), named, new Node.Scalar(now.place(), name, false)), now, path)
                : new SetValue(named.toString(), name).in(now);
    }
}
