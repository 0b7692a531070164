package sopwell.journal;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import sopwell.Check;

/** One happening and what is to be known of it. Filled by one thread, then told once. */
public final class Told {
    private static final Pattern ID = Pattern.compile("[a-z0-9.-]{0,40}");
    private static final int IPV4_BYTES = 3;
    private static final int IPV6_BYTES = 6;
    private static final int BYTE_BITS = 8;

    private final Happening what;
    private final Map<String, Object> fields = new LinkedHashMap<>();
    private Throwable fault;

    private Told(Happening what) {
        this.what = what;
    }

    /** This has happened. */
    public static Told of(Happening what) {
        return new Told(what);
    }

    /** A number. */
    public Told with(String field, long number) {
        fields.put(field, number);
        return this;
    }

    /** A word of a fixed list. */
    public Told with(String field, Enum<?> word) {
        fields.put(field, word.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return this;
    }

    /** The id of a person, device, program or part of the program; what has no id's form breaks. */
    public Told id(String field, String id) {
        Check.that(ID.matcher(id).matches(), "an id has letters, digits, points and dashes");
        if (!id.isEmpty()) {
            fields.put(field, id);
        }
        return this;
    }

    /** Where somebody comes from, no nearer than their network: /24, or /48 of an IPv6 address. */
    public Told network(String field, InetAddress address) {
        fields.put(field, network(address));
        return this;
    }

    /**
     * What the disk or the log said, or where the stand itself is. Not for what anybody typed, and
     * not for the message of any other fault.
     */
    public Told own(String field, String words) {
        fields.put(field, words);
        return this;
    }

    /** What kind of fault it was, and where; not its message, which may hold anything. */
    public Told fault(Throwable thrown) {
        fault = thrown;
        return this;
    }

    /** Tells it. */
    public void to(Logger logger) {
        LogRecord line = new LogRecord(what.weight().level(), what.sentence());
        line.setLoggerName(logger.getName());
        line.setParameters(new Object[] {this});
        line.setThrown(fault);
        logger.log(line);
    }

    /** What it is. */
    public Happening what() {
        return what;
    }

    /** What is to be known of it. */
    public Map<String, Object> fields() {
        return Map.copyOf(fields);
    }

    /** In the order in which they were told. */
    Map<String, Object> inOrder() {
        return fields;
    }

    private static String network(InetAddress address) {
        byte[] bytes = address.getAddress();
        int kept = address instanceof Inet6Address ? IPV6_BYTES : IPV4_BYTES;
        Arrays.fill(bytes, kept, bytes.length, (byte) 0);
        try {
            return InetAddress.getByAddress(bytes).getHostAddress() + "/" + kept * BYTE_BITS;
        } catch (UnknownHostException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
