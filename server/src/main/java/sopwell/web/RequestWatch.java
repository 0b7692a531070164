package sopwell.web;

import java.util.function.IntConsumer;

/** Is told of each request. Implementations are thread-safe and quick. */
@FunctionalInterface
public interface RequestWatch {
    /** Looks at nothing. */
    RequestWatch NONE = route -> status -> {};

    /**
     * A request has come.
     *
     * @param route {@code METHOD template}, never the path itself
     * @return is told the status once the answer is through
     */
    IntConsumer begins(String route);
}
