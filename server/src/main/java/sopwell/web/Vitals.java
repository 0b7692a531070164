package sopwell.web;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/**
 * What a program that watches over a stand is told. Immutable; everything in it is thread-safe.
 *
 * @param version which Sopwell this is
 * @param schema the log's
 * @param log what the newest check of the log found
 * @param scrape all figures as text
 */
public record Vitals(
        String version,
        int schema,
        Supplier<LogState> log,
        Supplier<CompletableFuture<Reply>> scrape) {}
