package sopwell.desk;

import java.util.concurrent.CompletableFuture;

/**
 * A command on its way to the desk. Immutable but for its answer.
 *
 * @param key the command's idempotency key
 * @param fingerprint what was asked, condensed: a repeat has the same, another command another
 * @param answer completed on the desk's thread; what waits for it must not hold that thread up
 */
record DeskRequest(
        String key, String fingerprint, StandCommand command, CompletableFuture<Answer> answer) {}
