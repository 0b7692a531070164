package sopwell.tls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.TestStand;

/** A stand that speaks https, and clients that trust its authority or do not. */
class SecuredStandTest {
    @TempDir Path folder;

    private static SSLContext trusting(X509Certificate authority) throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry("authority", authority);
        TrustManagerFactory factory = TrustManagerFactory.getInstance("PKIX");
        factory.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }

    private X509Certificate authority() throws Exception {
        byte[] pem = Files.readAllBytes(folder.resolve("stand").resolve(OwnCertificate.AUTHORITY));
        return KeyedCertificate.read(pem).certificate();
    }

    private static HttpResponse<String> get(SSLContext context, String address) throws Exception {
        HttpClient client = HttpClient.newBuilder().sslContext(context).build();
        return client.send(
                HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString());
    }

    @Test
    void whoTrustsTheAuthorityIsAnsweredByNameAndByAddress() throws Exception {
        try (TestStand stand = TestStand.secured(folder.resolve("stand"), List.of("stand.local"))) {
            assertTrue(stand.address().startsWith("https://127.0.0.1:"), stand.address());
            SSLContext context = trusting(authority());
            HttpResponse<String> page = get(context, stand.address() + "/trust");
            assertEquals(200, page.statusCode());
            assertTrue(page.headers().firstValue("Strict-Transport-Security").isEmpty());
            assertTrue(page.body().contains("stand.local"));
            String byName = stand.address().replace("127.0.0.1", "localhost");
            assertEquals(200, get(context, byName + "/healthz").statusCode());
            HttpResponse<String> file = get(context, stand.address() + "/trust/sopwell-stand.crt");
            Certificate got =
                    CertificateFactory.getInstance("X.509")
                            .generateCertificate(
                                    new ByteArrayInputStream(
                                            file.body().getBytes(StandardCharsets.US_ASCII)));
            assertEquals(authority(), got);
            assertFalse(file.body().contains("PRIVATE"));
            assertThrows(
                    SSLHandshakeException.class,
                    () -> get(SSLContext.getDefault(), stand.address() + "/healthz"));
        }
    }

    @Test
    void onlyNewProtocolsAndAuthenticatedEncryptionAreSpoken() throws Exception {
        try (TestStand stand = TestStand.secured(folder.resolve("stand"), List.of())) {
            SSLContext context = trusting(authority());
            int port = URI.create(stand.address()).getPort();
            for (String version : StandTls.PROTOCOLS) {
                assertEquals(version, greet(context, port, version, null));
            }
            for (String old : List.of("TLSv1", "TLSv1.1")) {
                assertThrows(SSLException.class, () -> greet(context, port, old, null), old);
            }
            int tried = 0;
            for (String suite : context.getSupportedSSLParameters().getCipherSuites()) {
                boolean ours = StandTls.SUITES.contains(suite);
                boolean ofV13 = !suite.contains("_WITH_");
                if (ours && !suite.contains("_RSA_")) {
                    greet(context, port, ofV13 ? "TLSv1.3" : "TLSv1.2", suite);
                    tried++;
                } else if (!ours && suite.contains("_WITH_")) {
                    assertThrows(
                            IOException.class, () -> greet(context, port, "TLSv1.2", suite), suite);
                    tried++;
                }
            }
            assertTrue(tried > 30, "there are many suites to refuse: " + tried);
        }
    }

    /** The version that was agreed on. */
    private static String greet(SSLContext context, int port, String version, String suite)
            throws IOException {
        try (SSLSocket socket =
                (SSLSocket) context.getSocketFactory().createSocket("127.0.0.1", port)) {
            socket.setSoTimeout(10_000);
            socket.setEnabledProtocols(new String[] {version});
            if (suite != null) {
                socket.setEnabledCipherSuites(new String[] {suite});
            }
            socket.startHandshake();
            return socket.getSession().getProtocol();
        }
    }

    @Test
    void boardsAreLiveOverTheSecuredSocket() throws Exception {
        try (TestStand stand = TestStand.secured(folder.resolve("stand"), List.of())) {
            HttpClient client = HttpClient.newBuilder().sslContext(trusting(authority())).build();
            CompletableFuture<String> first = new CompletableFuture<>();
            WebSocket socket =
                    client.newWebSocketBuilder()
                            .subprotocols("sopwell.json.v1")
                            .buildAsync(
                                    URI.create(
                                            stand.address().replace("https", "wss")
                                                    + "/ws/boards/line"),
                                    new WebSocket.Listener() {
                                        @Override
                                        public CompletionStage<?> onText(
                                                WebSocket from, CharSequence text, boolean last) {
                                            first.complete(text.toString());
                                            from.request(1);
                                            return null;
                                        }
                                    })
                            .get(20, TimeUnit.SECONDS);
            assertFalse(first.get(20, TimeUnit.SECONDS).isEmpty());
            socket.abort();
        }
    }

    @Test
    void aGivenKeyStoreIsShownAndRenewedWithoutARestart() throws Exception {
        KeyedCertificate authority = new Issuer().authority("Given", names(), Instant.now());
        Path store = folder.resolve("given.p12");
        Path password = folder.resolve("password");
        Files.writeString(password, "correct horse\n");
        X509Certificate first = keep(authority, store);
        SSLContext context = trusting(authority.certificate());
        try (TestStand stand = TestStand.secured(folder.resolve("stand"), store, password)) {
            HttpResponse<String> page = get(context, stand.address() + "/trust");
            assertEquals(200, page.statusCode());
            assertEquals(
                    "max-age=2592000",
                    page.headers().firstValue("Strict-Transport-Security").orElse(""));
            assertEquals(first, page.sslSession().orElseThrow().getPeerCertificates()[0]);
            assertEquals(
                    404, get(context, stand.address() + "/trust/sopwell-stand.crt").statusCode());
        }
        StandTls tls = StandTls.given(store, password, Instant.now());
        X509Certificate second = keep(authority, store);
        assertEquals(first, shown(tls, context));
        tls.renew(Instant.now());
        assertEquals(second, shown(tls, context));
        Files.writeString(store, "not a key store");
        tls.renew(Instant.now());
        assertEquals(second, shown(tls, context), "what can't be read changes nothing");
        assertThrows(TlsFault.class, () -> StandTls.given(store, password, Instant.now()));
    }

    /** What a server with these keys shows to a new client. */
    private static Certificate shown(StandTls tls, SSLContext client) throws Exception {
        InetAddress here = InetAddress.getLoopbackAddress();
        try (ServerSocket server =
                        tls.context().getServerSocketFactory().createServerSocket(0, 1, here);
                SSLSocket asking =
                        (SSLSocket)
                                client.getSocketFactory()
                                        .createSocket(here, server.getLocalPort())) {
            CompletableFuture<Void> answering =
                    CompletableFuture.runAsync(
                            () -> {
                                try (SSLSocket answer = (SSLSocket) server.accept()) {
                                    answer.startHandshake();
                                    answer.getInputStream().read();
                                } catch (IOException fault) {
                                    throw new UncheckedIOException(fault);
                                }
                            });
            asking.setSoTimeout(10_000);
            asking.startHandshake();
            Certificate found = asking.getSession().getPeerCertificates()[0];
            asking.getSession().invalidate();
            asking.shutdownOutput();
            answering.get(10, TimeUnit.SECONDS);
            return found;
        }
    }

    private static CertificateNames names() {
        return CertificateNames.of(Set.of("127.0.0.1"));
    }

    private static X509Certificate keep(KeyedCertificate authority, Path file) throws Exception {
        KeyedCertificate leaf = new Issuer().leaf(authority, names(), Instant.now());
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setKeyEntry(
                "stand",
                leaf.key(),
                "correct horse".toCharArray(),
                leaf.chain().toArray(Certificate[]::new));
        try (java.io.OutputStream out = Files.newOutputStream(file)) {
            store.store(out, "correct horse".toCharArray());
        }
        return leaf.certificate();
    }
}
