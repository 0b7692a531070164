package sopwell.tls;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a certificate is for. Immutable.
 *
 * @param dns names in small letters
 * @param addresses IPv4 and IPv6 addresses as Java writes them
 */
record CertificateNames(Set<String> dns, Set<String> addresses) {
    private static final Pattern ADDRESS = Pattern.compile("[0-9]+(\\.[0-9]+){3}|.*:.*");
    private static final Pattern NAME =
            Pattern.compile("(?!-)[a-z0-9-]{1,63}(\\.(?!-)[a-z0-9-]{1,63})*");

    CertificateNames {
        dns = Set.copyOf(dns);
        addresses = Set.copyOf(addresses);
    }

    /** Sorts the names by which a stand is called; what no certificate can hold is left out. */
    static CertificateNames of(Collection<String> called) {
        Set<String> dns = new TreeSet<>();
        Set<String> addresses = new TreeSet<>();
        for (String name : called) {
            if (ADDRESS.matcher(name).matches()) {
                InetAddress address = address(name.replaceAll("[\\[\\]]", ""));
                if (!address.isAnyLocalAddress()) {
                    addresses.add(address.getHostAddress());
                }
            } else if (NAME.matcher(name).matches()) {
                dns.add(name);
            }
        }
        return new CertificateNames(dns, addresses);
    }

    /** All of them, names first, in a fixed order. */
    Set<String> all() {
        Set<String> all = new java.util.LinkedHashSet<>(new TreeSet<>(dns));
        all.addAll(new TreeSet<>(addresses));
        return all;
    }

    /** The bytes of an address that is written out, without asking anybody for it. */
    static InetAddress address(String written) {
        try {
            return InetAddress.getByName(written);
        } catch (UnknownHostException wrong) {
            throw new TlsFault(written + " is no address.", wrong);
        }
    }

    /** The first three bytes of an IPv4 address, the first eight of an IPv6 one. */
    static byte[] network(String address) {
        byte[] bytes = address(address).getAddress();
        int kept = bytes.length == 4 ? 3 : 8;
        java.util.Arrays.fill(bytes, kept, bytes.length, (byte) 0);
        return bytes;
    }

    /** The networks that the addresses are in, in hexadecimal. */
    Set<String> networks() {
        return addresses.stream()
                .map(address -> java.util.HexFormat.of().formatHex(network(address)))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
