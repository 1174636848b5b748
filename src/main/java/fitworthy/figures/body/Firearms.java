package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.FirearmBox;
import java.util.List;
import java.util.stream.Stream;

/** How firearms are kept on the way; laws differ in what they ask of which. */
final class Firearms {

    private static final MeasureKind LOCKED =
            yesNo("body.firearms-locked", "whether firearms travel in a locked container or unable to fire");
    private static final MeasureKind FIXED =
            yesNo("body.firearms-fixed", "whether firearms travel in a locked container fixed to the vehicle");
    private static final MeasureKind PISTOLS = yesNo(
            "body.pistols-kept",
            "whether pistols and prohibited firearms travel locked or unable to fire, and apart from ammunition");
    private static final MeasureKind AMMUNITION =
            yesNo("body.ammunition-apart", "whether ammunition is kept apart from the firearms");

    static final List<MeasureKind> KINDS = List.of(LOCKED, FIXED, PISTOLS, AMMUNITION);

    private Firearms() {}

    static void box(String name, FirearmBox box, List<Measure> measures) {
        Choice<YesNo> locked =
                Choice.any(Stream.of(box.locks(), box.disabled())).orElseThrow();
        measures.add(Measure.of(LOCKED, name, locked));
        measures.add(Measure.of(FIXED, name, Choice.every(box.locks(), box.fixed())));
        measures.add(Measure.of(AMMUNITION, name, box.ammunitionApart()));
        if (!box.restricted().is(YesNo.NO)) {
            Choice<YesNo> kept = Choice.every(locked, box.ammunitionApart());
            Measure pistols = Measure.of(PISTOLS, name, kept);
            // What would be kept well enough needs no word on whether it has to be.
            measures.add(kept.is(YesNo.YES) ? pistols : pistols.given(box.restricted()));
        }
    }
}
