package fitworthy.counter.plan;

import fitworthy.counter.desk.Answer;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.TextEdit;
import fitworthy.source.WordField;
import fitworthy.usual.PlacesInWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The text of a sheet after a change, which a reader accepts. */
final class Text {

    private static final WordField WORDS = ((WordField) Shelves::wordField).or(PlacesInWords::wordField);

    private Text() {}

    /** With one value, beside what is taken from the shelf. */
    static String with(PlanSheet sheet, NodePath path, String value) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        FieldAnswer answer = new FieldAnswer(sheet.answer().place(), sheet.key(path), value);
        String text = answer.in(sheet.answer().text(), sheet.whole(), path, WORDS, faults);
        if (text == null) {
            throw new FaultsException(faults);
        }
        return accepted(sheet, text);
    }

    /** With a group or a list in place of whatever stands there. */
    static String with(PlanSheet sheet, NodePath path, Node value) throws FaultsException {
        String text = sheet.answer().text();
        return accepted(
                sheet,
                written(
                        sheet,
                        path,
                        sheet.own(path) == null ? TextEdit.with(text, path, value) : TextEdit.exchanged(text, path, value)));
    }

    static String without(PlanSheet sheet, NodePath path) throws FaultsException {
        return accepted(sheet, written(sheet, path, TextEdit.without(sheet.answer().text(), path)));
    }

    /** With one more item of a list. */
    static String adding(PlanSheet sheet, NodePath list, Node item) throws FaultsException {
        return accepted(sheet, appended(sheet, list, item));
    }

    /** The same, not yet looked at. */
    static String appended(PlanSheet sheet, NodePath list, Node item) throws FaultsException {
        return written(sheet, list, TextEdit.appended(sheet.answer().text(), list, item));
    }

    private static String written(PlanSheet sheet, NodePath path, Optional<String> text) throws FaultsException {
        if (text.isEmpty()) {
            throw Edit.refused(
                    sheet, sheet.key(path), "this cannot be written as the file is laid out", "write it there by hand");
        }
        return text.get();
    }

    static String accepted(PlanSheet sheet, String text) throws FaultsException {
        Answer now = sheet.answer();
        List<Fault> faults = new Answer(now.view(), now.place(), text).faults();
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return text;
    }
}
