package fitworthy.printout.letter;

import fitworthy.advice.Advice;
import fitworthy.book.Party;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.TyreSet;
import fitworthy.printout.words.Addressee;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.TyreDetails.Tyres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What who is asked of cables or of tyres has to know of them to answer or to quote, as far as the sheet has it. */
final class LetterFigures {

    private static final String CABLE = "the cable";
    private static final String UNKNOWN = "not known";

    private final Advice advice;
    private final Plan plan;

    LetterFigures(Advice advice) {
        this.advice = advice;
        this.plan = advice.loadings().get(0).plan();
    }

    /** The circuits that a letter speaks of, or the tyres. @param items what it asks */
    List<Block> blocks(Addressee whom, List<String> items) {
        if (whom.party() == Party.AUTO_ELECTRICIAN || whom.of().equals(CABLE)) {
            List<String> circuits = plan.sheet().circuits().stream()
                    .filter(circuit -> items.stream().anyMatch(item -> item.contains(circuit.name())))
                    .map(this::circuit)
                    .toList();
            return listed("The circuits that we ask about:", circuits);
        }
        return whom.party() == Party.TYRE_FITTER ? listed("The tyres:", tyres()) : List.of();
    }

    private static List<Block> listed(String heading, List<String> points) {
        return points.isEmpty() ? List.of() : List.of(new Paragraph(heading), new Points(points));
    }

    private String circuit(Circuit circuit) {
        Circuit.Cable cable = circuit.cable();
        return circuit.name() + ": " + shown(circuit.voltage(), "V", 0) + ", " + shown(load(circuit), "A", 1)
                + "; cable: copper " + shown(cable.section(), "mm2", 1) + ", length one way "
                + shown(cable.length(), "m", 1) + ", insulation for " + shown(cable.insulation(), "degC", 0)
                + (cable.engineBay().is(YesNo.YES) ? ", in the engine bay" : "") + "; " + fuse(circuit.fuse()) + ".";
    }

    /** What the checks count it with, A, so that one circuit has one current; else what the sheet has. */
    private Figure load(Circuit circuit) {
        return advice.outcomes()
                .map(outcome -> outcome.judged().measure())
                .filter(measure -> measure.kind().name().equals("electrical.fuse-load")
                        && measure.getSubject().equals(circuit.name())
                        && !Double.isNaN(measure.getValue()))
                .map(Measure::getValue)
                .findFirst()
                .map(Figure::of)
                .orElse(circuit.current());
    }

    private static String fuse(Circuit.Fuse fuse) {
        return fuse.rating().isZero()
                ? "no fuse"
                : "fuse " + shown(fuse.rating(), "A", 1)
                        + (fuse.distance().known()
                                ? ", " + shown(fuse.distance(), "mm", 0) + " along the cable from the battery or board"
                                : "");
    }

    /** Those planned, or else those that it came with; beside planned ones, those too. */
    private List<String> tyres() {
        List<String> tyres = new ArrayList<>();
        List<TyreSet> planned = plan.tyreSets();
        planned.stream()
                .filter(set -> !set.equals(plan.stockTyreSet()))
                .map(set -> tyres("Planned", set.tyres()))
                .forEach(tyres::add);
        tyres.add(tyres("On it as it came", plan.stockTyreSet().tyres()));
        return tyres;
    }

    private static String tyres(String which, Tyres tyres) {
        return which + ": size " + word(tyres.size()) + ", load index "
                + (tyres.loadIndex().known() ? Digits.number(tyres.loadIndex().value(), "", 0) : UNKNOWN)
                + Optional.of(tyres.dualLoadIndex())
                        .filter(Figure::known)
                        .map(dual -> " (" + Digits.number(dual.value(), "", 0) + " in pairs)")
                        .orElse("")
                + ", speed symbol " + word(tyres.speedSymbol()) + ".";
    }

    private static String word(String given) {
        return given.isEmpty() ? UNKNOWN : given;
    }

    private static String shown(Figure figure, String unit, int decimals) {
        return figure.known() ? plain(Digits.number(figure.value(), unit, decimals)) + " " + unit : UNKNOWN;
    }

    /** Without a zero behind the point, as on a label. */
    private static String plain(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }
}
