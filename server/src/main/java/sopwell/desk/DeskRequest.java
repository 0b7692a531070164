package sopwell.desk;

import java.util.concurrent.CompletableFuture;

/**
 * A command on its way to the desk. Two requests are never equal, even when they ask the same.
 * Immutable but for its answer.
 */
final class DeskRequest {
    private final String key;
    private final String fingerprint;
    private final StandCommand command;
    private final CompletableFuture<Answer> answer = new CompletableFuture<>();

    /**
     * A request nobody has answered.
     *
     * @param key the command's idempotency key
     * @param fingerprint what was asked, condensed: a repeat has the same, another command another
     */
    DeskRequest(String key, String fingerprint, StandCommand command) {
        this.key = key;
        this.fingerprint = fingerprint;
        this.command = command;
    }

    String key() {
        return key;
    }

    String fingerprint() {
        return fingerprint;
    }

    StandCommand command() {
        return command;
    }

    /** Completed on the desk's thread; what waits for it must not hold that thread up. */
    CompletableFuture<Answer> answer() {
        return answer;
    }
}
