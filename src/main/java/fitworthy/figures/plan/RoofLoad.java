package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is carried on the roof, with what was on it when the vehicle was weighed, wherever along it that is.
 *
 * @param loads in kg, by name; with what may be on it
 * @param told of each whether it is there
 */
public record RoofLoad(List<Working.Input> loads, List<Choice<YesNo>> told) {

    /** What is on the roof in a loading, or may be. */
    public static RoofLoad of(Loading loading) {
        Sheet sheet = loading.plan().sheet();
        RoofLoad roof = new RoofLoad(new ArrayList<>(), new ArrayList<>());
        loading.masses().stream()
                .filter(mass -> !mass.roof().is(YesNo.NO))
                .forEach(mass -> roof.add(mass.name(), mass.mass(), mass.roof()));
        Masses.unplaced(loading.plan()).forEach(part -> {
            Choice<YesNo> told = OnRoof.of(part, sheet);
            if (told.is(YesNo.YES) || part.kind() == Fitment.Kind.ROOF_RACK && !told.is(YesNo.NO)) {
                roof.add(part.name(), part.mass().exact(), told);
            }
        });
        return roof;
    }

    /** What the sheet puts in or on something, be that on the roof or not. @param names of all that it puts there */
    static RoofLoad standing(Loading loading, Set<String> names) {
        return standing(loading, names, Choice.of(YesNo.YES));
    }

    /** The same of what is, or may be, there. @param there whether it is */
    static RoofLoad standing(Loading loading, Set<String> names, Choice<YesNo> there) {
        RoofLoad standing = new RoofLoad(new ArrayList<>(), new ArrayList<>());
        loading.masses().stream()
                .filter(mass -> names.contains(mass.name()))
                .forEach(mass -> standing.add(mass.name(), mass.mass(), there));
        Masses.unplaced(loading.plan()).stream()
                .filter(part -> names.contains(part.name()))
                .forEach(part -> standing.add(part.name(), part.mass().exact(), there));
        return standing;
    }

    private void add(String name, Figure mass, Choice<YesNo> onIt) {
        loads.add(Working.in(name, mass, "kg"));
        told.add(onIt);
    }

    /** The same of some of it. @param wanted by name */
    public RoofLoad only(Predicate<String> wanted) {
        List<Integer> places = IntStream.range(0, loads.size())
                .filter(i -> wanted.test(loads.get(i).name()))
                .boxed()
                .toList();
        return new RoofLoad(
                places.stream().map(loads::get).toList(),
                places.stream().map(told::get).toList());
    }

    /** The two together. */
    RoofLoad with(RoofLoad other) {
        return new RoofLoad(
                Stream.concat(loads.stream(), other.loads.stream()).toList(),
                Stream.concat(told.stream(), other.told.stream()).toList());
    }

    /** What is known to be on it, each with its mass in kg. */
    public List<Working.Input> known() {
        return IntStream.range(0, loads.size())
                .filter(i -> told.get(i).is(YesNo.YES) && loads.get(i).figure().known())
                .mapToObj(loads::get)
                .toList();
    }

    /** The sum of that, in kg. */
    public Figure least() {
        return Working.total(known());
    }

    /** All of it, in kg. */
    public Figure sum() {
        return Working.total(loads);
    }
}
