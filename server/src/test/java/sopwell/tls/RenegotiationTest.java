package sopwell.tls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.crash.StandProcess;

/** In a process of its own, because Java reads the setting when its TLS is loaded. */
class RenegotiationTest {
    @TempDir Path folder;

    @Test
    void aClientThatWantsToShakeHandsAgainIsCutOff() throws Exception {
        try (StandProcess stand =
                StandProcess.start(
                        folder.resolve("stand"), StandProcess.quick(), List.of("--tls"))) {
            SSLContext context = trusting();
            int port = URI.create(stand.address()).getPort();
            try (SSLSocket socket =
                    (SSLSocket) context.getSocketFactory().createSocket("127.0.0.1", port)) {
                socket.setSoTimeout(10_000);
                socket.setEnabledProtocols(new String[] {"TLSv1.2"});
                assertEquals("HTTP/1.1 200 OK", ask(socket));
                assertThrows(
                        IOException.class,
                        () -> {
                            socket.startHandshake();
                            ask(socket);
                        });
            }
        }
    }

    private SSLContext trusting() throws Exception {
        byte[] pem = Files.readAllBytes(folder.resolve("stand").resolve(OwnCertificate.AUTHORITY));
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry("authority", KeyedCertificate.read(pem).certificate());
        TrustManagerFactory factory = TrustManagerFactory.getInstance("PKIX");
        factory.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }

    /** The first line of the answer; the rest is read away. */
    private static String ask(SSLSocket socket) throws IOException {
        String request = "GET /healthz HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        byte[] answer = new byte[16_384];
        int read = socket.getInputStream().read(answer);
        if (read < 0) {
            throw new IOException("closed");
        }
        return new String(answer, 0, read, StandardCharsets.UTF_8).lines().findFirst().orElse("");
    }
}
