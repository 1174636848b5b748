package fitworthy.advice;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/** A list that is worked out when somebody first looks into it, and once. */
final class LateList<T> extends AbstractList<T> {

    private Supplier<List<T>> work;
    private List<T> worked;

    LateList(Supplier<List<T>> work) {
        this.work = work;
    }

    private synchronized List<T> worked() {
        if (worked == null) {
            worked = List.copyOf(work.get());
            work = null;
        }
        return worked;
    }

    @Override
    public T get(int index) {
        return worked().get(index);
    }

    @Override
    public int size() {
        return worked().size();
    }
}
