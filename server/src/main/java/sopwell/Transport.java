package sopwell;

import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sopwell.orders.StandSettings;
import sopwell.storage.DataFolder;
import sopwell.tls.StandTls;
import sopwell.tls.TlsFault;
import sopwell.tls.Vault;
import sopwell.web.RequestWatch;
import sopwell.web.Server;
import sopwell.web.pages.Trust;

/**
 * Whether the stand speaks http or https, and by which names it is called. Other machines get https
 * unless http is asked for by name; this machine alone gets http unless https is. Thread-safe but
 * for {@link #renew}, which is the ticks' thread's.
 */
final class Transport {
    private final Optional<StandTls> tls;
    private final Set<String> names;

    private Transport(Optional<StandTls> tls, Set<String> names) {
        this.tls = tls;
        this.names = names;
    }

    /**
     * Decides what was asked for.
     *
     * @throws StartRefused when that contradicts itself, or the certificate can't be had
     */
    static Transport of(Config.Serve asked, StandSettings settings, DataFolder folder, Instant now)
            throws StartRefused {
        InetAddress host = host(asked);
        Set<String> names = names(asked, host);
        boolean given = asked.keyStore != null;
        if (given != (asked.keyStorePasswordFile != null)) {
            throw new StartRefused(
                    "--tls-keystore and --tls-keystore-password-file belong together.");
        }
        if (asked.plainHttp && (given || asked.tls)) {
            throw new StartRefused("--plain-http and https at once can't be.");
        }
        if (asked.plainHttp || (host.isLoopbackAddress() && !given && !asked.tls)) {
            return new Transport(Optional.empty(), names);
        }
        try {
            StandTls tls =
                    given
                            ? StandTls.given(asked.keyStore, asked.keyStorePasswordFile, now)
                            : StandTls.own(vault(folder), settings.name(), names, now);
            return new Transport(Optional.of(tls), names);
        } catch (TlsFault fault) {
            throw new StartRefused(fault.getMessage());
        }
    }

    Server.Place place(Config.Serve asked) {
        return new Server.Place(
                asked.host,
                asked.port,
                names,
                asked.connectionsPerAddress,
                tls.map(
                        spoken ->
                                new Server.Tls(
                                        spoken.context(),
                                        StandTls.PROTOCOLS,
                                        StandTls.SUITES,
                                        spoken.authority().isEmpty())),
                Optional.empty(),
                RequestWatch.NONE);
    }

    String scheme() {
        return tls.isPresent() ? "https" : "http";
    }

    /** Whom a tablet must trust; nobody over http, or when a key store was given. */
    Optional<Trust> trust() {
        return tls.flatMap(StandTls::authority)
                .map(a -> new Trust(a.pem(), a.fingerprint(), a.names(), a.until()));
    }

    void renew(Instant now) {
        tls.ifPresent(spoken -> spoken.renew(now));
    }

    private static InetAddress host(Config.Serve asked) throws StartRefused {
        try {
            return InetAddress.getByName(asked.host);
        } catch (UnknownHostException unknown) {
            throw new StartRefused(asked.host + " is no address or name of this machine.");
        }
    }

    private static Set<String> names(Config.Serve asked, InetAddress host) {
        Set<String> names = new TreeSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));
        names.add(asked.host.toLowerCase(Locale.ROOT));
        asked.names.forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
        if (host.isAnyLocalAddress()) {
            names.addAll(ownAddresses());
        }
        return names;
    }

    /** Who listens on every address of this machine is called by every one of them. */
    private static Set<String> ownAddresses() {
        try {
            Set<String> found = new TreeSet<>();
            NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> !address.isLinkLocalAddress())
                    .map(InetAddress::getHostAddress)
                    .map(address -> address.replaceFirst("%.*", ""))
                    .forEach(a -> found.add(a.contains(":") ? "[" + a + "]" : a));
            return found;
        } catch (SocketException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Vault vault(DataFolder folder) {
        return new Vault() {
            @Override
            public Optional<byte[]> read(String name) {
                return folder.secret(name);
            }

            @Override
            public void write(String name, byte[] bytes) {
                folder.putSecret(name, bytes);
            }
        };
    }
}
