package sopwell.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;

/**
 * Writes a day's tally as JSON and reads it back: arrays in a fixed order, since a year of them is
 * read at once. Stateless.
 */
final class TallyCodec {
    /** Changes when the form changes; what is kept in another form is counted anew. */
    static final int FORM = 1;

    private static final JsonFactory JSON = new JsonFactory();

    private TallyCodec() {}

    static String write(DayTally tally) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartArray();
            for (HalfHour half : tally.halfHours()) {
                json.writeStartArray();
                json.writeNumber(half.index());
                write(json, half.counts());
                for (Sold sold : half.sold()) {
                    write(json, sold);
                }
                json.writeEndArray();
            }
            json.writeEndArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /**
     * Reads what was written.
     *
     * @throws IOException when it is something else
     */
    static DayTally read(LocalDate date, String text) throws IOException {
        try (JsonParser json = JSON.createParser(text)) {
            List<HalfHour> halfHours = new ArrayList<>();
            begin(json);
            while (json.nextToken() == JsonToken.START_ARRAY) {
                int index = Math.toIntExact(number(json));
                Counts counts = counts(json);
                List<Sold> sold = new ArrayList<>();
                while (json.nextToken() == JsonToken.START_ARRAY) {
                    sold.add(sold(json));
                }
                halfHours.add(new HalfHour(index, counts, sold));
            }
            return new DayTally(date, halfHours);
        } catch (ArithmeticException tooLarge) {
            throw new IOException(tooLarge);
        }
    }

    private static void write(JsonGenerator json, Counts counts) throws IOException {
        json.writeStartArray();
        json.writeNumber(counts.orders());
        json.writeNumber(counts.voids());
        json.writeNumber(counts.staffOrders());
        json.writeNumber(counts.takenBefore());
        json.writeNumber(counts.toldPrices());
        json.writeNumber(counts.subtotalCents());
        json.writeEndArray();
    }

    private static Counts counts(JsonParser json) throws IOException {
        begin(json);
        Counts counts =
                new Counts(
                        Math.toIntExact(number(json)),
                        Math.toIntExact(number(json)),
                        Math.toIntExact(number(json)),
                        Math.toIntExact(number(json)),
                        Math.toIntExact(number(json)),
                        number(json));
        end(json);
        return counts;
    }

    private static void write(JsonGenerator json, Sold sold) throws IOException {
        json.writeStartArray();
        json.writeString(sold.item());
        json.writeString(sold.size());
        json.writeNumber(sold.staff() ? 1 : 0);
        json.writeNumber(sold.pieces());
        json.writeNumber(sold.cents());
        for (String way : sold.ways()) {
            json.writeString(way);
        }
        json.writeEndArray();
    }

    /** Its array was begun. */
    private static Sold sold(JsonParser json) throws IOException {
        String item = text(json);
        String size = text(json);
        boolean staff = number(json) == 1;
        int pieces = Math.toIntExact(number(json));
        long cents = number(json);
        List<String> ways = new ArrayList<>();
        while (json.nextToken() == JsonToken.VALUE_STRING) {
            ways.add(json.getText());
        }
        return new Sold(item, size, ways, staff, pieces, cents);
    }

    private static void begin(JsonParser json) throws IOException {
        expect(json, JsonToken.START_ARRAY);
    }

    private static void end(JsonParser json) throws IOException {
        expect(json, JsonToken.END_ARRAY);
    }

    private static long number(JsonParser json) throws IOException {
        expect(json, JsonToken.VALUE_NUMBER_INT);
        return json.getLongValue();
    }

    private static String text(JsonParser json) throws IOException {
        expect(json, JsonToken.VALUE_STRING);
        return json.getText();
    }

    private static void expect(JsonParser json, JsonToken wanted) throws IOException {
        JsonToken found = json.nextToken();
        if (found != wanted) {
            throw new IOException("not a tally: " + found + " where " + wanted + " should be");
        }
    }
}
