package fitworthy.learn;

import fitworthy.learn.Learnt.PartMass;
import fitworthy.learn.Learnt.Reason;
import fitworthy.learn.Learnt.Verdict;
import fitworthy.learn.LeastSquares.Rows;
import fitworthy.learn.WeighedSheet.Axle;
import fitworthy.learn.WeighedSheet.Effect;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Learns the masses of parts from weighbridge readings of many sheets; the model and what it assumes are in
 * docs/method.md. Sheets are taken one after the other, and only their rows are kept.
 */
public final class Learning {

    /** Two estimates that go against each other this far are hardly told apart. */
    private static final double HARDLY_APART = -0.9;

    /** What fewer weighings show of a part is no more than a hint: an assumption. */
    static final int FEWEST = 4;

    private final List<WeighedSheet> weighed = new ArrayList<>();
    private final Map<Part, Uses> parts = new LinkedHashMap<>();
    private final Set<String> contents = new HashSet<>();
    private final List<String> twice = new ArrayList<>();
    private final List<String> unused = new ArrayList<>();
    private final List<SheetReadings> refused = new ArrayList<>();
    private int sheets;

    /** The effects of one part, one for each weighed sheet it is in. */
    private record Uses(List<Effect> all) {

        double written() {
            return all.stream()
                    .mapToDouble(effect -> effect.written().value())
                    .average()
                    .orElseThrow();
        }

        double spread() {
            double mean = written();
            return all.stream()
                    .mapToDouble(effect -> Math.abs(effect.written().value() - mean)
                            + effect.written().tolerance())
                    .max()
                    .orElseThrow();
        }

        boolean guessed() {
            return all.stream().anyMatch(Effect::guessed);
        }

        int weighings() {
            return all.stream().mapToInt(Effect::weighings).sum();
        }

        /** Whether vehicles or weighings with it can be held against others. */
        boolean compared() {
            return all.stream().filter(Effect::counts).count() > 1
                    || all.stream().anyMatch(Effect::comesOff);
        }
    }

    /** Takes a sheet. */
    public void add(SheetReadings sheet) {
        sheets++;
        if (sheet.weighed() == null) {
            refused.add(sheet);
        } else if (!contents.add(sheet.content())) {
            twice.add(sheet.sheet());
        } else {
            sheet.weighed()
                    .unused()
                    .forEach(reading -> unused.add(sheet.sheet() + ", " + reading.loading() + ": "
                            + reading.missing().get(0).path() + " is missing"));
            add(sheet.weighed());
        }
    }

    void add(WeighedSheet sheet) {
        if (sheet.off().length > 0) {
            weighed.add(sheet);
            sheet.parts().forEach(effect -> parts.computeIfAbsent(effect.part(), part -> new Uses(new ArrayList<>()))
                    .all()
                    .add(effect));
        }
    }

    /** What the sheets taken so far tell. */
    public Learnt learnt() {
        Map<Part, Integer> unknowns = new LinkedHashMap<>();
        parts.forEach((part, uses) -> {
            if (uses.compared()) {
                unknowns.put(part, unknowns.size());
            }
        });
        Map<List<Object>, Integer> axles = new HashMap<>();
        List<Double> known = new ArrayList<>();
        unknowns.forEach((part, number) -> known.add(Double.POSITIVE_INFINITY));
        List<Rows> rows = weighed.stream()
                .map(sheet -> rows(sheet, unknowns, axles, known))
                .toList();
        LeastSquares solution = LeastSquares.of(
                rows, known.stream().mapToDouble(Double::doubleValue).toArray());
        List<Part> names = List.copyOf(unknowns.keySet());
        return new Learnt(
                sheets,
                weighed.size(),
                weighed.stream().mapToInt(sheet -> sheet.off().length / 2).sum(),
                List.copyOf(twice),
                parts.keySet().stream()
                        .map(part -> told(part, unknowns.get(part), names, solution))
                        .sorted(Comparator.comparing(PartMass::verdict)
                                .thenComparing(mass -> -Math.abs(mass.told() ? mass.off() : 0))
                                .thenComparing(mass -> mass.part().name())
                                .thenComparing(mass -> mass.part().kind()))
                        .toList(),
                solution.scatter(),
                solution.free(),
                solution.scatters(),
                List.copyOf(unused),
                List.copyOf(refused));
    }

    /**
     * The rows of a sheet. Masses that sheets give alike of the same vehicle were read in one place and are off together.
     * A part that is compared nowhere is taken as written, its tolerance an error like that of a load.
     *
     * @param axles the numbers of the vehicles' own axle masses; new ones are added
     * @param known what is known of each unknown; that of new ones is added
     */
    private Rows rows(
            WeighedSheet sheet, Map<Part, Integer> unknowns, Map<List<Object>, Integer> axles, List<Double> known) {
        double[] observed = sheet.off().clone();
        Map<Integer, double[]> effects = new LinkedHashMap<>();
        List<double[]> sources = new ArrayList<>();
        for (Effect effect : sheet.parts()) {
            if (unknowns.containsKey(effect.part())) {
                double beyond =
                        effect.written().value() - parts.get(effect.part()).written();
                for (int i = 0; i < observed.length; i++) {
                    observed[i] += beyond * effect.onRows()[i];
                }
                effects.put(unknowns.get(effect.part()), effect.onRows());
            } else {
                sources.add(times(effect.onRows(), effect.written().tolerance()));
            }
        }
        for (Axle axle : sheet.axles()) {
            if (axle.tolerance() > 0) {
                effects.put(
                        axles.computeIfAbsent(axle.source(), source -> {
                            known.add(axle.tolerance() / LeastSquares.NORMAL);
                            return known.size() - 1;
                        }),
                        axle.onRows());
            }
        }
        double[][] covariance = WeighedSheet.covariance(sources, observed.length);
        for (int i = 0; i < observed.length; i++) {
            for (int j = 0; j < observed.length; j++) {
                covariance[i][j] += sheet.covariance()[i][j];
            }
        }
        return new Rows(observed, covariance, effects);
    }

    private static double[] times(double[] rows, double factor) {
        return Arrays.stream(rows).map(row -> row * factor).toArray();
    }

    private PartMass told(Part part, Integer unknown, List<Part> names, LeastSquares solution) {
        Uses uses = parts.get(part);
        if (unknown == null) {
            return untold(part, uses, uses.weighings() == 0 ? Reason.NO_READING : Reason.ONE_VEHICLE, List.of());
        }
        if (!solution.tells(unknown)) {
            return untold(
                    part,
                    uses,
                    Reason.TOGETHER,
                    solution.mixedWith(unknown).stream()
                            .filter(other -> other < names.size())
                            .map(names::get)
                            .toList());
        }
        double off = solution.value(unknown);
        double within = solution.within(unknown);
        if (uses.weighings() < FEWEST) {
            return untold(part, uses, Reason.FEW, List.of());
        }
        boolean contradicts = Math.abs(off) - within > uses.spread();
        boolean told = contradicts || within <= uses.spread();
        return mass(
                part,
                uses,
                contradicts ? Verdict.OFF : told ? Verdict.AS_WRITTEN : Verdict.CANNOT_TELL,
                off,
                within,
                told ? null : Reason.WIDE,
                told ? List.of() : hardlyApart(unknown, names, solution));
    }

    private static List<Part> hardlyApart(int unknown, List<Part> names, LeastSquares solution) {
        List<Part> others = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (i != unknown && solution.tells(i) && solution.correlation(unknown, i) < HARDLY_APART) {
                others.add(names.get(i));
            }
        }
        return others;
    }

    private static PartMass untold(Part part, Uses uses, Reason reason, List<Part> with) {
        return mass(part, uses, Verdict.CANNOT_TELL, null, null, reason, with);
    }

    private static PartMass mass(
            Part part, Uses uses, Verdict verdict, Double off, Double within, Reason reason, List<Part> with) {
        return new PartMass(
                part,
                uses.all().size(),
                uses.weighings(),
                uses.written(),
                uses.spread(),
                uses.guessed(),
                verdict,
                off,
                within,
                reason,
                with);
    }
}
