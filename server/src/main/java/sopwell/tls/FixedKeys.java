package sopwell.tls;

import java.net.Socket;
import java.security.Principal;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.List;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.X509ExtendedKeyManager;

/** One key for every handshake that can use its kind. Immutable. */
final class FixedKeys extends X509ExtendedKeyManager {
    private static final String ALIAS = "stand";

    private final KeyedCertificate own;

    FixedKeys(KeyedCertificate own) {
        this.own = own;
    }

    private String alias(String keyType) {
        return own.key().getAlgorithm().equals(keyType) ? ALIAS : null;
    }

    @Override
    public String chooseEngineServerAlias(String keyType, Principal[] issuers, SSLEngine engine) {
        return alias(keyType);
    }

    @Override
    public String chooseServerAlias(String keyType, Principal[] issuers, Socket socket) {
        return alias(keyType);
    }

    @Override
    public String[] getServerAliases(String keyType, Principal[] issuers) {
        return alias(keyType) == null ? new String[0] : new String[] {ALIAS};
    }

    /** The stand never shows itself to another server. */
    @Override
    public String chooseClientAlias(String[] keyType, Principal[] issuers, Socket socket) {
        return null;
    }

    @Override
    public String[] getClientAliases(String keyType, Principal[] issuers) {
        return new String[0];
    }

    @Override
    public X509Certificate[] getCertificateChain(String alias) {
        List<X509Certificate> chain = own.chain();
        return chain.toArray(X509Certificate[]::new);
    }

    @Override
    public PrivateKey getPrivateKey(String alias) {
        return own.key();
    }
}
