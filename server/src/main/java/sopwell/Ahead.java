package sopwell;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import java.util.function.Supplier;
import sopwell.storage.DataFolder;
import sopwell.web.Server;

/** Does on a second core what a start would otherwise do one thing after another. Stateless. */
final class Ahead {
    private Ahead() {}

    /**
     * Has libraries loaded that the start needs in a while. What fails here fails there again, and
     * is told there.
     */
    static void loadLibraries() {
        Thread loading =
                new Thread(
                        () -> {
                            DataFolder.loadLibrary();
                            Server.loadLibrary();
                        },
                        "ahead");
        loading.setDaemon(true);
        loading.start();
    }

    /**
     * Makes something while it is checked whether it may be made at all. When the check throws,
     * that is thrown, whatever came of the other, and what was made is undone.
     */
    static <T> T whileChecking(Runnable check, Supplier<T> made, Consumer<T> undo) {
        FutureTask<Void> checking = new FutureTask<>(check, null);
        new Thread(checking, "check at start").start();
        Optional<T> result = Optional.empty();
        RuntimeException broke = null;
        try {
            result = Optional.of(made.get());
        } catch (RuntimeException fault) {
            broke = fault;
        }
        RuntimeException found = faultOf(checking).orElse(broke);
        if (found != null) {
            result.ifPresent(undo);
            throw found;
        }
        return result.orElseThrow();
    }

    private static Optional<RuntimeException> faultOf(FutureTask<Void> checking) {
        try {
            checking.get();
            return Optional.empty();
        } catch (ExecutionException fault) {
            return Optional.of(
                    fault.getCause() instanceof RuntimeException known
                            ? known
                            : new IllegalStateException(fault.getCause()));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Optional.of(new IllegalStateException("the check was cut short", interrupted));
        }
    }
}
