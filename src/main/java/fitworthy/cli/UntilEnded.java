package fitworthy.cli;

/** Waits for the person who started a command to end it. */
final class UntilEnded {

    private UntilEnded() {}

    /**
     * Waits until the thread is interrupted. Where the program is ended meanwhile, by Ctrl-C say, what is open is closed
     * first, and that is no failure.
     */
    static void with(AutoCloseable open) {
        Thread ending = new Thread(() -> {
            try {
                open.close();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
            // Else the exit code would be that of the signal.
            Runtime.getRuntime().halt(ExitCodes.IN_ORDER);
        });
        Runtime.getRuntime().addShutdownHook(ending);
        try {
            Thread.currentThread().join();
        } catch (InterruptedException e) {
            Runtime.getRuntime().removeShutdownHook(ending);
        }
    }
}
