package fitworthy.source;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every fault found in it. */
public class FaultsException extends Exception {

    private final transient List<Fault> faults;

    /** @param faults at least one fault, kept in reading order */
    public FaultsException(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("a FaultsException needs at least one fault");
        }
        this.faults = faults.stream().sorted(Fault.IN_READING_ORDER).toList();
    }

    /** @throws FaultsException where there is any fault */
    public static void refuse(List<Fault> faults) throws FaultsException {
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
    }

    public List<Fault> faults() {
        return faults;
    }
}
