package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Details;
import java.util.List;
import java.util.function.Function;

/** The circuits and electrical parts that are on in a load case. */
final class LoadedCircuits {

    private LoadedCircuits() {}

    /** The circuits whose part is on. */
    static List<Circuit> circuits(Loading loading) {
        return loading.plan().sheet().circuits().stream()
                .filter(circuit -> !loading.loadCase().off().contains(circuit.part()))
                .toList();
    }

    /** The details of each part of this type that is on. */
    static <D extends Details> List<D> details(Loading loading, Class<D> type) {
        return loading.plan().sheet().fitments().stream()
                .filter(loading::carries)
                .map(fitment -> fitment.details())
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    /** A figure of each part of this type that is on, in the unit it is printed in. */
    static <D extends Details> List<Input> parts(
            Loading loading, Class<D> type, Function<D, Figure> figure, String unit) {
        return loading.plan().sheet().fitments().stream()
                .filter(fitment -> loading.carries(fitment) && type.isInstance(fitment.details()))
                .map(fitment -> in(fitment.name(), figure.apply(type.cast(fitment.details())), unit))
                .toList();
    }
}
