package sopwell.storage;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sopwell.log.EventLog;
import sopwell.log.Recorded;

/** A log as it would stand in a file, byte for byte. Stateless. */
public final class Written {
    private Written() {}

    /** Every event with its place, time, key and body. */
    public static byte[] bytes(EventLog log) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        log.read(1, log.lastSeq(), recorded -> write(recorded, out));
        return out.toByteArray();
    }

    /** The names of everything that can happen. */
    public static Set<String> names() {
        return Stream.of(EventName.values()).map(EventName::written).collect(Collectors.toSet());
    }

    /** The names of everything that has happened. */
    public static Set<String> names(EventLog log) {
        Set<String> names = new TreeSet<>();
        log.read(1, log.lastSeq(), r -> names.add(EventCodec.name(r.event()).written()));
        return names;
    }

    private static void write(Recorded recorded, ByteArrayOutputStream out) {
        String head =
                recorded.seq()
                        + " "
                        + recorded.atMs()
                        + " "
                        + recorded.key()
                        + " "
                        + recorded.ordinal()
                        + " "
                        + EventCodec.name(recorded.event())
                        + " ";
        out.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(EventCodec.encode(recorded.event()));
        out.write('\n');
    }
}
