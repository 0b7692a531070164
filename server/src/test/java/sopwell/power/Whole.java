package sopwell.power;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.desk.Script;
import sopwell.log.EventLog;
import sopwell.log.LogFault;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.storage.DataFolder;
import sopwell.storage.RowHashes;

/**
 * What a log came to in the end, against which what a power cut leaves of it is held. Immutable.
 *
 * @param hashes of all rows; equal hashes are equal beginnings
 * @param ordinals each event's place among its command's events
 */
record Whole(List<String> hashes, List<Integer> ordinals) {
    /** The log of a folder as it is. */
    static Whole of(Path folder) {
        List<Integer> ordinals = events(folder).stream().map(Recorded::ordinal).toList();
        return new Whole(RowHashes.of(folder, Script.SETTINGS.stand()), ordinals);
    }

    /** All events of a folder's log, opened as a stand opens it, each row checked. */
    static List<Recorded> events(Path folder) {
        List<Recorded> events = new ArrayList<>();
        try (DataFolder data = DataFolder.open(folder);
                EventLog log = data.openLog(Script.SETTINGS.stand())) {
            log.read(1, log.lastSeq(), events::add);
        }
        return events;
    }

    /**
     * What is wrong with what is left in a folder, or nothing.
     *
     * @param acks a line for each answer: the key, the place of its first event, and how many
     */
    String wrong(Path folder, List<String> acks) {
        List<Recorded> found;
        try {
            found = events(folder);
        } catch (LogFault fault) {
            return "it does not open: " + fault.getMessage();
        }
        List<String> left = RowHashes.of(folder, Script.SETTINGS.stand());
        if (left.size() > hashes.size() || !left.equals(hashes.subList(0, left.size()))) {
            return "it is not the beginning of what was written";
        }
        if (left.size() < hashes.size() && ordinals.get(left.size()) != 0) {
            return "half a command is there, to " + left.size();
        }
        return wrong(found, acks);
    }

    /** The same of events, whatever they came to in the end. */
    static String wrong(List<Recorded> found, List<String> acks) {
        Map<String, Long> places = new HashMap<>();
        Map<String, Integer> sizes = new HashMap<>();
        Set<Integer> numbers = new HashSet<>();
        long next = 1;
        for (Recorded event : found) {
            if (event.seq() != next++) {
                return "a gap before " + event.seq();
            }
            if (sizes.merge(event.key(), 1, Integer::sum) != event.ordinal() + 1) {
                return "not in order: " + event.key();
            }
            if (event.ordinal() == 0 && places.put(event.key(), event.seq()) != null) {
                return "twice there: " + event.key();
            }
            if (event.event() instanceof OrderPlaced placed && !numbers.add(placed.number())) {
                return "two orders have the number " + placed.number();
            }
        }
        for (String ack : acks) {
            String[] said = ack.split(" ", -1);
            Long place = places.get(said[0]);
            if (place == null || place != Long.parseLong(said[1])) {
                return "lost: " + ack;
            }
            if (sizes.get(said[0]) != Integer.parseInt(said[2])) {
                return "half there: " + ack;
            }
        }
        return "";
    }
}
