package fitworthy.counter.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Values by key, of which those that were used longest ago are given up. By any thread. */
public final class LastUsed<V> {

    private final Map<String, V> values;

    /** @param most how many are kept */
    public LastUsed(int most) {
        values = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, V> eldest) {
                return size() > most;
            }
        };
    }

    public synchronized void put(String key, V value) {
        values.put(key, value);
    }

    /** Empty where it was not kept, or given up since. */
    public synchronized Optional<V> find(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /** The one that is kept, else one that is made while nobody else makes any. */
    public synchronized V get(String key, Supplier<V> made) {
        return find(key).orElseGet(() -> {
            V value = made.get();
            put(key, value);
            return value;
        });
    }
}
