package sopwell.tls;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A vault that is gone with the test. */
final class MemoryVault implements Vault {
    private final Map<String, byte[]> files = new HashMap<>();

    @Override
    public Optional<byte[]> read(String name) {
        return Optional.ofNullable(files.get(name));
    }

    @Override
    public void write(String name, byte[] bytes) {
        files.put(name, bytes.clone());
    }
}
