package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import sopwell.Limits;
import sopwell.menu.Faults;
import sopwell.money.CashRule;
import sopwell.money.TaxRule;
import sopwell.orders.Safety;
import sopwell.orders.StandSettings;

/** Reads and writes a stand's settings, {@code stand.json}. Stateless. */
public final class StandFile {
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1," + Limits.ID_CHARS_MAX + "}");
    private static final int TARGET_SECONDS_MAX = 7_200;
    private static final int NUMBER_LEAST_MAX = 99;

    private StandFile() {}

    /** Reads and checks a stand's settings; every fault is found at once. */
    public static StandReading read(byte[] json) {
        Faults faults = new Faults();
        Optional<JsonNode> tree = JsonTree.read(json, faults);
        if (tree.isEmpty()) {
            return new StandReading(
                    Optional.empty(), BackupRule.USUAL, PrivacyRule.USUAL, faults.found());
        }
        Fields fields = new Fields(tree.get(), "", faults);
        String stand = fields.text("stand");
        if (!stand.isEmpty() && !ID.matcher(stand).matches()) {
            faults.add(
                    "/stand",
                    "\"" + stand + "\" is no id.",
                    "An id is 1 to 40 of the characters a to z, 0 to 9 and -.");
        }
        String name = fields.text("name");
        ZoneId zone = zone(fields);
        int cutHour = within(fields, "cutHour", 0, 23);
        TaxRule tax = MoneyFields.tax(fields);
        int target = within(fields, "targetSeconds", 1, TARGET_SECONDS_MAX);
        int numberMax =
                fields.has("orderNumberMax")
                        ? within(
                                fields, "orderNumberMax", NUMBER_LEAST_MAX, Limits.ORDER_NUMBER_MAX)
                        : Limits.ORDER_NUMBER_DEFAULT_MAX;
        CashRule cash = MoneyFields.cash(fields);
        Safety safety = SafetyFields.read(fields);
        BackupRule backup = BackupFields.read(fields);
        PrivacyRule privacy = PrivacyFields.read(fields);
        fields.close();
        if (!faults.isEmpty()) {
            return new StandReading(Optional.empty(), backup, privacy, faults.found());
        }
        StandSettings settings =
                new StandSettings(stand, name, zone, cutHour, tax, target, numberMax, cash, safety);
        return new StandReading(Optional.of(settings), backup, privacy, faults.found());
    }

    /** The settings as a file. */
    public static byte[] write(StandSettings settings) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("stand", settings.stand());
        node.put("name", settings.name());
        node.put("zone", settings.zone().getId());
        node.put("cutHour", settings.cutHour());
        node.put("targetSeconds", settings.targetSeconds());
        node.put("orderNumberMax", settings.numberMax());
        MoneyFields.write(node, settings.tax(), settings.cash());
        SafetyFields.write(node, settings.safety());
        return (node.toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    static int within(Fields fields, String field, int min, int max) {
        int before = fields.faults().found().size();
        int number = fields.whole(field);
        boolean read = fields.faults().found().size() == before;
        if (read && fields.has(field) && (number < min || number > max)) {
            fields.faults()
                    .add(
                            fields.at(field),
                            number + " is out of range.",
                            "The least is " + min + " and the most is " + max + ".");
        }
        return number;
    }

    /** Offsets without rules are refused: they know nothing of summer time. */
    private static ZoneId zone(Fields fields) {
        String zone = fields.text("zone");
        if (zone.isEmpty()) {
            return ZoneOffset.UTC;
        }
        TreeSet<String> known = new TreeSet<>(ZoneId.getAvailableZoneIds());
        try {
            if (known.contains(zone)) {
                return ZoneId.of(zone);
            }
        } catch (DateTimeException e) {
            // Falls through: a zone without rules is as good as unknown.
        }
        fields.faults().unknown(fields.at("zone"), "time zone", zone, known);
        return ZoneOffset.UTC;
    }
}
