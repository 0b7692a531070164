package sopwell.access;

import java.time.InstantSource;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * What access needs from outside. Immutable; everything in it is thread-safe.
 *
 * @param hasher the slow hash of PINs and passwords
 * @param hashing where it is worked out, one at a time; refuses with a {@link
 *     java.util.concurrent.RejectedExecutionException} when too many wait
 * @param chance 32 bytes that nobody can guess, others each time
 * @param keeper keeps the state, whole or not at all, before it returns
 * @param witness is told of each try to get in
 */
public record Tools(
        Hasher hasher,
        Executor hashing,
        Supplier<byte[]> chance,
        InstantSource clock,
        Consumer<AccessState> keeper,
        Witness witness) {
    /** A slow, salted hash. Implementations are thread-safe. */
    public interface Hasher {
        /** The hash of a secret, with everything that checking needs. */
        String hash(String secret);

        /** Whether a hash is of this secret. */
        boolean matches(String secret, String hash);
    }
}
