package fitworthy.counter.side;

import fitworthy.counter.desk.Answer;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The answers that were shown last, so that a change made of many can be held against where it began. */
final class Recent {

    private static final int MOST = 8;

    private final Map<String, Answer> byVersion = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Answer> eldest) {
            return size() > MOST;
        }
    };

    synchronized void add(Answer answer) {
        byVersion.put(answer.version(), answer);
    }

    /** The one of this version; nothing where it was long ago. */
    synchronized Optional<Answer> find(String version) {
        return Optional.ofNullable(byVersion.get(version));
    }
}
