package sopwell.prep.quantity;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.Check;

/**
 * Requirements of parts that are made of one another, netted level by level: what is on hand of a
 * part also saves everything that it is made of. Stateless.
 */
public final class Requirements {
    private Requirements() {}

    /**
     * A part and what one of it takes. Immutable.
     *
     * @param takes amounts by part
     */
    public record Part(String id, Netting.Start start, Map<String, Long> takes) {
        public Part {
            takes = Map.copyOf(takes);
        }
    }

    /**
     * All parts' requirements.
     *
     * @param downward whatever is made before everything that it takes
     * @param asked gross requirements from outside, by part; all with as many periods
     */
    public static Map<String, Netting> of(List<Part> downward, Map<String, long[]> asked) {
        int periods = asked.values().iterator().next().length;
        Map<String, long[]> gross = new LinkedHashMap<>();
        asked.forEach((id, amounts) -> gross.put(id, amounts.clone()));
        Map<String, Netting> found = new LinkedHashMap<>();
        for (Part part : downward) {
            long[] own = gross.getOrDefault(part.id(), new long[periods]);
            Netting netting = Netting.of(own, part.start());
            found.put(part.id(), netting);
            part.takes()
                    .forEach(
                            (id, each) -> {
                                Check.that(!found.containsKey(id), "parts stand in their order");
                                add(gross.computeIfAbsent(id, k -> new long[periods]),
                                        netting, each);
                            });
        }
        return found;
    }

    private static void add(long[] gross, Netting netting, long each) {
        Arrays.setAll(gross, t -> Math.addExact(gross[t], each * netting.releases()[t]));
    }
}
