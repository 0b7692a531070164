package sopwell.tls;

import java.net.Socket;
import java.security.Principal;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.X509ExtendedKeyManager;

/**
 * Hands each handshake to the keys of the moment, so that a renewed certificate is shown without a
 * restart. A handshake that is under way while they change may fail; its browser tries again.
 * Thread-safe.
 */
final class LatestKeys extends X509ExtendedKeyManager {
    private volatile X509ExtendedKeyManager now;

    LatestKeys(X509ExtendedKeyManager now) {
        this.now = now;
    }

    void set(X509ExtendedKeyManager keys) {
        now = keys;
    }

    @Override
    public String chooseEngineServerAlias(String keyType, Principal[] issuers, SSLEngine engine) {
        return now.chooseEngineServerAlias(keyType, issuers, engine);
    }

    @Override
    public String chooseServerAlias(String keyType, Principal[] issuers, Socket socket) {
        return now.chooseServerAlias(keyType, issuers, socket);
    }

    @Override
    public String[] getServerAliases(String keyType, Principal[] issuers) {
        return now.getServerAliases(keyType, issuers);
    }

    @Override
    public String chooseClientAlias(String[] keyType, Principal[] issuers, Socket socket) {
        return now.chooseClientAlias(keyType, issuers, socket);
    }

    @Override
    public String[] getClientAliases(String keyType, Principal[] issuers) {
        return now.getClientAliases(keyType, issuers);
    }

    @Override
    public X509Certificate[] getCertificateChain(String alias) {
        return now.getCertificateChain(alias);
    }

    @Override
    public PrivateKey getPrivateKey(String alias) {
        return now.getPrivateKey(alias);
    }
}
