package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The cases of the book, a topic at a time, for mutation testing, which runs the same tests thousands of times: the
 * build runs them one by one in {@link BookCasesTest}. With {@code -Dtopics=mass+towing} only those of these topics.
 */
class CasesByTopic {

    static Stream<String> topics() throws FaultsException {
        String asked = System.getProperty("topics", "");
        return asked.isEmpty() ? Books.shipped().topics().stream() : Stream.of(asked.split("\\+"));
    }

    @ParameterizedTest
    @MethodSource("topics")
    void everyCaseGivesTheAdviceItNames(String topic) throws FaultsException {
        List<String> problems = new ArrayList<>();
        for (Cases.Case each : Books.cases()) {
            if (each.topic().equals(topic) && problems.isEmpty()) {
                problems.addAll(CaseResult.of(Books.engine(), each).problems());
            }
        }
        assertEquals(List.of(), problems);
    }
}
