package fitworthy.proof;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.util.List;

/** What is wrong with a rule or region that somebody asks to begin. */
final class Refusal {

    private Refusal() {}

    /** @param where the argument that it is in */
    static Fault fault(String where, String problem, String right) {
        return new Fault(Place.of(where), "", problem, right);
    }

    static FaultsException of(String where, String problem, String right) {
        return new FaultsException(List.of(fault(where, problem, right)));
    }
}
