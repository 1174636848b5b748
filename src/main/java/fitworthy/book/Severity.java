package fitworthy.book;

/** How much a finding asks for, worst first. */
public enum Severity {
    /** As planned it breaks a rating or can hurt someone. */
    STOP,
    /** It will not do its job, or spoils another part, until something in the plan changes. */
    CHANGE,
    /** An engineer, authority, insurer or maker has to agree. */
    CONFIRM,
    /** Worth knowing; nothing to decide. */
    NOTE
}
