package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What is carried on the roof, with what was on it when the vehicle was weighed, wherever along it that is.
 *
 * @param loads in kg, by name; with what may be on it
 * @param told of each whether it is on the roof
 */
public record RoofLoad(List<Working.Input> loads, List<Choice<YesNo>> told) {

    /** What is on the roof in a loading, or may be. */
    public static RoofLoad of(Loading loading) {
        List<Working.Input> loads = new ArrayList<>();
        List<Choice<YesNo>> told = new ArrayList<>();
        loading.masses().stream().filter(mass -> !mass.roof().is(YesNo.NO)).forEach(mass -> {
            loads.add(Working.in(mass.name(), mass.mass(), "kg"));
            told.add(mass.roof());
        });
        Masses.unplaced(loading.plan()).stream()
                .filter(part -> part.roof().is(YesNo.YES)
                        || part.kind() == Fitment.Kind.ROOF_RACK && !part.roof().is(YesNo.NO))
                .forEach(part -> {
                    loads.add(Working.in(part.name(), part.mass().exact(), "kg"));
                    told.add(part.roof());
                });
        return new RoofLoad(loads, told);
    }

    /** The same of some of it. @param wanted by name */
    RoofLoad only(Predicate<String> wanted) {
        List<Integer> places = IntStream.range(0, loads.size())
                .filter(i -> wanted.test(loads.get(i).name()))
                .boxed()
                .toList();
        return new RoofLoad(
                places.stream().map(loads::get).toList(),
                places.stream().map(told::get).toList());
    }

    /** What is known to be on it, in kg. */
    public Figure least() {
        return Working.total(IntStream.range(0, loads.size())
                .filter(i -> told.get(i).is(YesNo.YES) && loads.get(i).figure().known())
                .mapToObj(loads::get)
                .toList());
    }

    /** All of it, in kg. */
    public Figure sum() {
        return Working.total(loads);
    }
}
