package sopwell.tls;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Instant;
import javax.net.ssl.KeyManager;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.X509ExtendedKeyManager;

/**
 * A key store that the owner gives, PKCS #12 or JKS, with its password in a file of its own. It is
 * read anew each time, so that whoever renews the certificate only replaces the file. Immutable.
 */
final class GivenKeyStore implements Source {
    private final Path file;
    private final Path passwordFile;

    GivenKeyStore(Path file, Path passwordFile) {
        this.file = file;
        this.passwordFile = passwordFile;
    }

    @Override
    public X509ExtendedKeyManager keys(Instant now) {
        try {
            char[] password =
                    Files.readString(passwordFile, StandardCharsets.UTF_8).strip().toCharArray();
            KeyStore store = KeyStore.getInstance(file.toFile(), password);
            KeyManagerFactory factory = KeyManagerFactory.getInstance("PKIX");
            factory.init(store, password);
            for (KeyManager manager : factory.getKeyManagers()) {
                X509ExtendedKeyManager keys = (X509ExtendedKeyManager) manager;
                if (keys.getServerAliases("EC", null) != null
                        || keys.getServerAliases("RSA", null) != null) {
                    return keys;
                }
            }
            throw new GeneralSecurityException("there is no EC or RSA key with a certificate");
        } catch (GeneralSecurityException | IOException fault) {
            throw new TlsFault("The key store " + file + " can't be used: " + fault, fault);
        }
    }
}
