package fitworthy.learn;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import com.fasterxml.jackson.annotation.JsonProperty;
import fitworthy.batch.Refusal;
import fitworthy.document.Json;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Table;
import fitworthy.learn.Learnt.PartMass;
import fitworthy.learn.Learnt.Verdict;
import fitworthy.printout.words.Digits;
import fitworthy.source.Words;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What weighbridge readings tell of the masses of parts, as a report, as JSON, or as masses for a shelf. */
public final class LearnPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-learn/1";

    private static final String CAUTION =
            "Advice, not certification: readings tell masses only as far as the sheets say"
                    + " what else was on the weighbridge.";

    private record Written(
            String shape,
            int sheets,
            int weighed,
            int weighings,
            double scatter,
            int free,
            Boolean widened,
            List<WrittenPart> parts,
            List<String> unused,
            List<String> twice,
            List<WrittenSheet> refused) {}

    /** Masses in kg. */
    private record WrittenPart(
            String name,
            String kind,
            int sheets,
            int weighings,
            double written,
            double spread,
            Boolean guessed,
            String verdict,
            @JsonProperty("off-by") Double off,
            Double within,
            String reason,
            List<String> with) {

        static WrittenPart of(PartMass part) {
            return new WrittenPart(
                    part.part().name(),
                    kindOf(part),
                    part.sheets(),
                    part.weighings(),
                    tenth(part.written()),
                    tenth(part.spread()),
                    part.guessed() ? true : null,
                    Words.hyphenated(part.verdict().name()),
                    part.off() == null ? null : tenth(part.off()),
                    part.within() == null ? null : tenth(part.within()),
                    part.reason() == null
                            ? null
                            : Words.hyphenated(part.reason().name()),
                    part.with().isEmpty()
                            ? null
                            : part.with().stream().map(Part::name).toList());
        }
    }

    private record WrittenSheet(String sheet, List<Refusal> faults) {}

    private LearnPrintout() {}

    private static double tenth(double kilograms) {
        return Math.round(kilograms * 10) / 10.0 + 0.0;
    }

    private static String kindOf(PartMass part) {
        return Words.hyphenated(part.part().kind().name());
    }

    public static void json(PrintWriter out, Learnt learnt) {
        Json.print(
                out,
                new Written(
                        SHAPE,
                        learnt.sheets(),
                        learnt.weighed(),
                        learnt.weighings(),
                        tenth(learnt.scatter()),
                        learnt.free(),
                        learnt.widened() ? true : null,
                        learnt.parts().stream().map(WrittenPart::of).toList(),
                        learnt.unused(),
                        learnt.twice(),
                        learnt.refused().stream()
                                .map(sheet -> new WrittenSheet(sheet.sheet(), sheet.faults()))
                                .toList()));
    }

    /** For people: what is told, and what is not, part by part. */
    public static Report report(Learnt learnt) {
        List<Section> sections = new ArrayList<>();
        section(sections, "off", "Off by more than what is written allows", told(learnt, Verdict.OFF));
        section(sections, "as-written", "Told, and as written", told(learnt, Verdict.AS_WRITTEN));
        section(sections, "untold", "Cannot tell", untold(learnt));
        section(sections, "left", "Left out", leftOut(learnt));
        return new Report(
                "Masses learnt",
                "What weighbridge readings tell of the masses of parts",
                "",
                CAUTION,
                verdict(learnt),
                List.of(new Particular(
                        "From",
                        learnt.weighings() + " weighings of " + learnt.weighed() + " sheets, of " + learnt.sheets()
                                + " looked at")),
                sections);
    }

    private static void section(List<Section> sections, String id, String heading, List<Block> blocks) {
        if (!blocks.isEmpty()) {
            sections.add(new Section(id, heading, blocks));
        }
    }

    private static String verdict(Learnt learnt) {
        int off = learnt.parts(Verdict.OFF).size();
        int asWritten = learnt.parts(Verdict.AS_WRITTEN).size();
        int untold = learnt.parts(Verdict.CANNOT_TELL).size();
        if (learnt.weighings() == 0) {
            return "No sheet has a weighbridge reading that can be used ('weighed' in its cases), so nothing can be said.";
        }
        return (off + asWritten == 0
                        ? "These readings tell the mass of no part; "
                        : off + " off, " + asWritten + " as written, ")
                + untold + " cannot be told.";
    }

    private static List<Block> told(Learnt learnt, Verdict verdict) {
        List<Row> rows = learnt.parts(verdict).stream()
                .map(part -> Row.of(
                        part.part().name() + " (" + kindOf(part) + ")",
                        sheets(part),
                        written(part) + ", off by " + signed(part.off()) + " kg; 95 %: "
                                + signed(part.off() - part.within()) + " to " + signed(part.off() + part.within())
                                + " kg"))
                .toList();
        List<Block> blocks = new ArrayList<>(new Table(
                        "Its mass as written, the mean where sheets differ; how much heavier it is; and the interval that"
                                + " holds that in 95 of 100 cases",
                        List.of(text("Part", 30), figure("Sheets", 15), text("Mass", 55)),
                        rows)
                .unlessEmpty());
        if (!blocks.isEmpty() && learnt.widened()) {
            blocks.add(
                    new Notice(
                            "The readings scatter more than their tolerances and those of what else is aboard can"
                                    + " explain (" + kilograms(learnt.scatter()) + " where " + learnt.free()
                                    + " is usual), so that all"
                                    + " intervals were widened. A load that is on no sheet, or a tolerance that is too narrow, does this."));
        }
        return blocks;
    }

    private static List<Block> untold(Learnt learnt) {
        return new Table(
                        "Why the readings do not tell its mass",
                        List.of(text("Part", 30), figure("Sheets", 15), text("Why", 55)),
                        learnt.parts(Verdict.CANNOT_TELL).stream()
                                .map(part -> Row.of(
                                        part.part().name() + " (" + kindOf(part) + ")",
                                        sheets(part),
                                        written(part) + "; cannot tell: " + why(part)))
                                .toList())
                .unlessEmpty();
    }

    private static List<Block> leftOut(Learnt learnt) {
        List<Block> blocks = new ArrayList<>();
        points(blocks, "Readings that cannot be held against a sum:", learnt.unused());
        points(blocks, "Copies of another sheet, which count once:", learnt.twice());
        points(
                blocks,
                "Sheets that cannot be used:",
                learnt.refused().stream()
                        .flatMap(sheet -> sheet.faults().stream())
                        .map(fault -> fault.place() + ": "
                                + (fault.about().isEmpty() ? "" : fault.about() + ": ") + fault.problem() + "; right: "
                                + fault.right())
                        .toList());
        return blocks;
    }

    private static void points(List<Block> blocks, String before, List<String> texts) {
        if (!texts.isEmpty()) {
            blocks.add(new Paragraph(before));
            blocks.add(new Points(texts));
        }
    }

    private static String sheets(PartMass part) {
        return part.sheets() + (part.sheets() == 1 ? " sheet" : " sheets");
    }

    private static String written(PartMass part) {
        return (part.guessed() ? "about " : "") + kilograms(part.written()) + " kg";
    }

    private static String why(PartMass part) {
        String with =
                part.with().stream().map(other -> "'" + other.name() + "'").collect(Collectors.joining(", "));
        return switch (part.reason()) {
            case NO_READING -> "no reading hangs on it; it was off, or in the kerb mass already";
            case ONE_VEHICLE -> "weighed in one vehicle only";
            case FEW -> "only " + part.weighings() + " weighings tell of it, and " + Learning.FEWEST + " is the least";
            case TOGETHER -> "never weighed apart from " + with;
            case WIDE ->
                "known to +/- " + kilograms(part.within()) + " kg by the readings, and to +/- "
                        + kilograms(part.spread()) + " kg as written"
                        + (with.isEmpty() ? "" : "; hardly weighed apart from " + with);
        };
    }

    private static String signed(double kilograms) {
        return (tenth(kilograms) > 0 ? "+" : "") + kilograms(kilograms);
    }

    private static String kilograms(double kilograms) {
        return Digits.number(kilograms, "kg", 1);
    }

    /**
     * The masses that are told, as a list of parts in a sheet's own fields; to be looked at by a person before it goes on
     * a shelf. A tolerance is rounded up and never less than the digit it is written in.
     */
    public static String proposal(Learnt learnt) {
        StringBuilder yaml = new StringBuilder("# Masses told by " + learnt.weighings() + " weighings of "
                + learnt.weighed() + " sheets; +/- is 95 %. For a person to look at, not yet anybody's shelf.\n"
                + "fitments:\n");
        for (PartMass part : proposed(learnt)) {
            yaml.append("  # of " + part.weighings() + " weighings; written as " + written(part) + " +/- "
                    + kilograms(part.spread()) + " kg\n");
            yaml.append("  - {name: " + Json.line(part.part().name()) + ", kind: " + kindOf(part) + ", mass: "
                    + kilograms(part.mass()) + " kg +/- " + kilograms(Math.ceil(part.within() * 10) / 10) + " kg}\n");
        }
        return yaml.toString();
    }

    /** What can be proposed: nothing weighs less than nothing. */
    public static List<PartMass> proposed(Learnt learnt) {
        return learnt.told().stream().filter(part -> tenth(part.mass()) > 0).toList();
    }
}
