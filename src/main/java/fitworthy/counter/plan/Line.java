package fitworthy.counter.plan;

import java.util.List;

/**
 * A thing in a line.
 *
 * @param facts kind, mass, place, price
 * @param marks what is to be known of how sure it is
 */
public record Line(String name, List<String> facts, List<String> marks) {}
