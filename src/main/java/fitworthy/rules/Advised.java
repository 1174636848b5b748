package fitworthy.rules;

/** Advice already given in this load case, for rules that build on others. */
public record Advised(String id, String subject) {}
