package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.AnsweredText;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.advice.View;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.InputFile;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.usual.Filling;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A sheet whose file gets the answers to its questions. */
final class AnsweredSheet {

    private static final String MARK_OF_UTF_8 = "\uFEFF";

    private final Path file;
    private final View view;
    private View.Read read;
    private Advice advice;

    /** @param read what the file holds */
    AnsweredSheet(Path file, View view, View.Read read) {
        this.file = file;
        this.view = view;
        now(read);
    }

    private void now(View.Read given) {
        read = given;
        advice = Adviser.advise(view.engine(), given.sheet());
    }

    String title() {
        return advice.sheet().title();
    }

    Questions questions() {
        return Questions.of(view.engine(), advice);
    }

    /** The way to a field by its path with names; null where there is none. */
    NodePath path(String field) {
        return NodePath.find(field, Filling.withItems(read.tree()));
    }

    /**
     * Writes answers into the file, all of them or none. It is read anew, so that what was written into it in the
     * meantime stays.
     *
     * @return what they settle
     * @throws FaultsException where one of them is not what the field takes, or the file cannot be used any more
     * @throws NotWritten where the file cannot be written
     */
    Settled write(List<FieldAnswer> answers) throws FaultsException, NotWritten {
        List<Fault> faults = new ArrayList<>();
        byte[] bytes = InputFile.bytes(file, faults);
        Place place = Place.of(file.toString());
        String text = InputFile.text(bytes, place, faults);
        String answered = AnsweredText.of(view, place, text, faults).with(answers, faults);
        Advice before = advice;
        View.Read written = view.read(NodeReader.read(place, answered, faults), faults);
        OutputFile.write(file, (isMarked(bytes) ? MARK_OF_UTF_8 : "") + answered);
        now(written);
        return Settled.of(before, advice);
    }

    private static boolean isMarked(byte[] bytes) {
        return new String(bytes, 0, Math.min(3, bytes.length), StandardCharsets.UTF_8).startsWith(MARK_OF_UTF_8);
    }
}
