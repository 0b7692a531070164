package sopwell.tls;

import java.util.Optional;

/** Keeps small secret files of the stand, readable by their owner alone. */
public interface Vault {
    /** What is kept under a name. */
    Optional<byte[]> read(String name);

    /** Keeps it, whole or not at all. */
    void write(String name, byte[] bytes);
}
