package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.menu.Caution;

/** The field {@code cautions} of stations and pans in a menu's JSON. Stateless. */
final class CautionFields {
    private static final List<String> KNOWN =
            Stream.of(Caution.values()).map(CautionFields::written).toList();

    private CautionFields() {}

    static List<Caution> read(Fields fields) {
        List<Caution> cautions = new ArrayList<>();
        List<String> written = fields.textsOr("cautions");
        for (int n = 0; n < written.size(); n++) {
            String word = written.get(n);
            Optional<Caution> known =
                    Stream.of(Caution.values()).filter(c -> written(c).equals(word)).findFirst();
            known.ifPresent(cautions::add);
            if (known.isEmpty()) {
                String place = fields.at("cautions") + "/" + n;
                fields.faults().unknown(place, "caution", word, KNOWN);
            }
        }
        return cautions;
    }

    static void write(ObjectNode node, List<Caution> cautions) {
        if (!cautions.isEmpty()) {
            ArrayNode array = node.putArray("cautions");
            cautions.forEach(caution -> array.add(written(caution)));
        }
    }

    private static String written(Caution caution) {
        return caution.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
