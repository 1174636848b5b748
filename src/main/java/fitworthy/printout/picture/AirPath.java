package fitworthy.printout.picture;

import fitworthy.figures.intake.IntakeMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.IntakeDetails;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The way of the air from a snorkel's head to the filter, with the state of every joint. Not to scale. */
final class AirPath {

    private static final double PIPE = 74;
    private static final double HALF = 11;
    private static final double WORDS = 128;
    private static final double STATE = 328;
    private static final double STEP = 32;

    private final PictureFacts facts;
    private final Svg svg;
    private final Fitment fitment;
    private final IntakeDetails.Snorkel snorkel;
    private final StringBuilder words = new StringBuilder();

    /** A picture for each snorkel. */
    static List<Picture> of(List<PictureFacts> cases) {
        // None of it depends on the loading.
        PictureFacts facts = cases.get(0);
        Loading loading = facts.loading();
        List<Fitment> snorkels = loading.plan().fitments(Fitment.Kind.SNORKEL);
        return snorkels.stream()
                .map(snorkel -> new AirPath(facts, snorkel, snorkels.indexOf(snorkel) + 1).picture())
                .toList();
    }

    private AirPath(PictureFacts facts, Fitment fitment, int number) {
        this.facts = facts;
        this.fitment = fitment;
        snorkel = (IntakeDetails.Snorkel) fitment.details();
        svg = new Svg("picture-air-path-" + number);
    }

    private Picture picture() {
        double y = head();
        List<IntakeDetails.Joint> joints = snorkel.joints();
        if (joints.isEmpty()) {
            y = joint(
                    1,
                    "its joints",
                    facts.one(IntakeMeasures.JOINT, fitment.name()).orElseThrow(),
                    y);
        }
        for (int i = 0; i < joints.size(); i++) {
            y = joint(
                    i + 1,
                    joints.get(i).name(),
                    facts.one(IntakeMeasures.JOINT, joints.get(i).name()).orElseThrow(),
                    y);
        }
        y = airbox(y);
        return svg.picture(
                "The way of the air: " + Lettering.named(fitment.name()),
                "From the head to the filter, in order. " + words.toString().strip(),
                y);
    }

    private double head() {
        double top = 10;
        Optional<Measure> cleaner =
                facts.all(IntakeMeasures.PRE_CLEANER).stream().findFirst();
        boolean fitted = cleaner.isPresent() && cleaner.get().getWord().equals("yes");
        boolean open = cleaner.isPresent() && !cleaner.get().isKnown();
        if (fitted || open) {
            Pen pen = fitted ? Pen.LINE : Pen.DASHED;
            svg.lines(
                    "pre-cleaner",
                    pen,
                    fitted ? Svg.PALE : "none",
                    PIPE - 24,
                    top,
                    PIPE + 24,
                    top,
                    PIPE + 18,
                    top + 20,
                    PIPE - 18,
                    top + 20,
                    PIPE - 24,
                    top);
            if (open) {
                svg.text(Svg.NORMAL, Anchor.MIDDLE, PIPE, top + 13, "?");
            }
        } else {
            svg.lines(
                    "head",
                    Pen.LINE,
                    Svg.WHITE,
                    PIPE - 26,
                    top,
                    PIPE + HALF,
                    top,
                    PIPE + HALF,
                    top + 20,
                    PIPE - HALF,
                    top + 20,
                    PIPE - 26,
                    top + 14,
                    PIPE - 26,
                    top);
        }
        svg.line(Pen.LINE, PIPE - 50, top + 7, PIPE - 32, top + 7);
        svg.head(PIPE - 29, top + 7, 1, 0);
        String height = snorkel.headHeight().known()
                ? Digits.number(snorkel.headHeight().value(), "mm", 0) + " mm above the ground"
                : "height not known";
        svg.bold(Svg.LARGE, Anchor.START, WORDS, top + 8, "Head");
        svg.text(Svg.NORMAL, Anchor.START, WORDS, top + 19, height);
        words.append("Head: ").append(height);
        cleaner.ifPresent(measure -> {
            String state = measure.isKnown() ? fitted ? "pre-cleaner" : "no pre-cleaner" : "pre-cleaner not known";
            state(top + 8, state, !fitted);
            words.append(", ").append(state);
        });
        words.append(". ");
        return top + 20;
    }

    /** A length of pipe with a joint at its end: closed and black, open with dust going in, or dashed. */
    private double joint(int number, String name, Measure sealed, double top) {
        double y = top + STEP - 10;
        pipe(top, y);
        String part = "joint-" + number;
        if (!sealed.isKnown()) {
            svg.box(part, Pen.DASHED, Svg.WHITE, PIPE - 17, y, 34, 9);
            svg.text(Svg.SMALL, Anchor.MIDDLE, PIPE, y + 7.2, "?");
        } else if (sealed.getWord().equals("yes")) {
            svg.box(part, Pen.LINE, Svg.BLACK, PIPE - 17, y, 34, 9);
        } else {
            leak(part, y);
        }
        String state = sealed.isKnown() ? sealed.getWord().equals("yes") ? "sealed" : "NOT SEALED" : "not known";
        svg.text(Svg.LARGE, Anchor.START, WORDS, y + 8.5, number + ".");
        named(name, WORDS + 18, y + 8.5, state);
        words.append("Joint ")
                .append(number)
                .append(", ")
                .append(Lettering.named(name))
                .append(": ")
                .append(state.toLowerCase(Locale.ROOT))
                .append(". ");
        return y + 9;
    }

    private void pipe(double from, double to) {
        svg.line(Pen.LINE, PIPE - HALF, from, PIPE - HALF, to);
        svg.line(Pen.LINE, PIPE + HALF, from, PIPE + HALF, to);
    }

    /** A gap in the way with arrows of dust and water going in. */
    private void leak(String part, double y) {
        svg.box(part, Pen.NONE, Svg.WHITE, PIPE - 17, y, 34, 9);
        svg.line(Pen.BOLD, PIPE - 17, y, PIPE + 17, y);
        svg.line(Pen.BOLD, PIPE - 17, y + 9, PIPE + 17, y + 9);
        for (int side : new int[] {-1, 1}) {
            svg.line(Pen.LINE, PIPE + side * 34, y + 4.5, PIPE + side * 16, y + 4.5);
            svg.head(PIPE + side * 12, y + 4.5, -side, 0);
        }
    }

    private void named(String name, double x, double y, String state) {
        svg.text(Svg.LARGE, Anchor.START, x, y, Lettering.fitted(name, Svg.LARGE, STATE - x - 6));
        state(y, state, !state.equals("sealed"));
    }

    private void state(double y, String state, boolean stressed) {
        svg.text("", Svg.LARGE, Anchor.START, stressed, Svg.BLACK, STATE, y, state);
    }

    private double airbox(double top) {
        double y = top + 34;
        pipe(top, y);
        double width = 80;
        double height = 62;
        double left = PIPE - width / 2;
        Measure lid = facts.all(IntakeMeasures.LID).get(0);
        Measure leak = facts.all(IntakeMeasures.KNOWN_LEAK).get(0);
        Measure drain = facts.all(IntakeMeasures.DRAIN).get(0);
        svg.lines("airbox", Pen.LINE, "none", left, y + 13, left, y, left + width, y, left + width, y + 13);
        svg.lines("", Pen.LINE, "none", left, y + 17, left, y + height, left + width, y + height, left + width, y + 17);
        lid(lid, leak, left, y + 13, width);
        for (double x = left + 10; x < left + width - 6; x += 8) {
            svg.lines("", Pen.HAIR, "none", x, y + 36, x + 4, y + 28, x + 8, y + 36);
        }
        svg.text(Svg.SMALL, Anchor.MIDDLE, PIPE, y + 48, "filter");
        String name = Lettering.fitted(lid.getSubject(), Svg.LARGE, STATE - WORDS - 6);
        svg.bold(Svg.LARGE, Anchor.START, WORDS, y + 2, name);
        String lidWords = !lid.isKnown() ? "not known" : lid.getWord().equals("yes") ? "sealed" : "NOT SEALED";
        named("lid", WORDS, y + 18, lidWords);
        String leakWords =
                !leak.isKnown() ? "not known" : leak.getWord().equals("yes") ? "KNOWN TO LEAK" : "none known";
        svg.text(Svg.LARGE, Anchor.START, WORDS, y + 36, "dust past its seal, this type");
        state(y + 36, leakWords, !leakWords.equals("none known"));
        double below = drain(drain, y + height);
        words.append("Airbox, ")
                .append(Lettering.named(lid.getSubject()))
                .append(": lid ")
                .append(lidWords.toLowerCase(Locale.ROOT))
                .append("; dust past the seal of this type: ")
                .append(leakWords.toLowerCase(Locale.ROOT))
                .append("; drain ")
                .append(drainWords(drain))
                .append('.');
        bore(y);
        return below;
    }

    private void lid(Measure lid, Measure leak, double left, double y, double width) {
        boolean tight = lid.isKnown() && lid.getWord().equals("yes");
        boolean open = lid.isKnown() && !tight || leak.getWord().equals("yes");
        if (open) {
            svg.line("lid", Pen.BOLD, left - 5, y, left + width + 5, y);
            svg.line(Pen.BOLD, left - 5, y + 5, left + width + 5, y + 5);
            svg.line(Pen.LINE, left - 26, y + 2.5, left - 4, y + 2.5);
            svg.head(left, y + 2.5, 1, 0);
        } else {
            svg.box(
                    "lid",
                    tight && leak.isKnown() ? Pen.LINE : Pen.DASHED,
                    tight && leak.isKnown() ? Svg.BLACK : Svg.WHITE,
                    left - 5,
                    y,
                    width + 10,
                    5);
        }
    }

    private double drain(Measure drain, double y) {
        String state = drainWords(drain);
        boolean none = state.equals("none");
        if (!none) {
            boolean known = drain.isKnown();
            svg.box("drain", known ? Pen.LINE : Pen.DASHED, Svg.WHITE, PIPE - 5, y, 10, 10);
            if (state.equals("one way")) {
                svg.line(Pen.BOLD, PIPE - 5, y + 10, PIPE + 5, y + 10);
            }
            svg.line(Pen.LINE, PIPE, y + 12, PIPE, y + 20);
            svg.head(PIPE, y + 24, 0, 1);
            if (state.equals("open")) {
                svg.line(Pen.LINE, PIPE - 14, y + 24, PIPE - 14, y + 16);
                svg.head(PIPE - 14, y + 12, 0, -1);
            }
        }
        svg.text(Svg.LARGE, Anchor.START, WORDS, y + 10, "drain");
        state(y + 10, state, state.equals("open") || state.equals("not known"));
        return y + 30;
    }

    private static String drainWords(Measure drain) {
        return drain.isKnown() ? Wording.value(drain) : "not known";
    }

    private void bore(double y) {
        facts.one(IntakeMeasures.BORE, fitment.name()).ifPresent(bore -> {
            String text = "bore " + shown(bore, bore.getValue()) + ", airbox inlet " + shown(bore, bore.getLimit());
            svg.text(Svg.NORMAL, Anchor.START, WORDS, y - 15, text);
            words.append(" Narrowest ").append(text).append('.');
        });
    }

    private static String shown(Measure measure, double value) {
        return Double.isNaN(value) ? "?" : Digits.quantity(value, measure.kind());
    }
}
