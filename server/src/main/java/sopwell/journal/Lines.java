package sopwell.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes what happens as lines, in plain words or as JSON, one object a line. What libraries say in
 * words is left out, because it may hold what a request held: their code and logger are there, and
 * of every fault its kind and where it was, but not its message. Thread-safe.
 */
public final class Lines extends Formatter {
    private static final DateTimeFormatter TIME =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter(Locale.ROOT);
    private static final Pattern CODE = Pattern.compile("^([A-Z]{2,10}[0-9]{3,6}):");
    private static final int CAUSES_MAX = 5;
    private static final int FRAMES_MAX = 30;
    private static final JsonFactory JSON = new JsonFactory();

    private final Form form;

    /** How lines look. */
    public enum Form {
        plain,
        json
    }

    /** A kind of fault, and where it was. */
    private record Fault(String type, List<String> at) {}

    /** In one form. */
    public Lines(Form form) {
        this.form = form;
    }

    /** Whether a line is worth writing: all of ours, and what libraries warn of. */
    public static boolean isWorth(LogRecord line) {
        return told(line) != null || line.getLevel().intValue() >= Level.WARNING.intValue();
    }

    @Override
    public String format(LogRecord line) {
        Told told = told(line);
        Told known = told == null ? library(line) : told;
        List<Fault> faults = faults(line.getThrown());
        return form == Form.json ? json(line, known, faults) : plain(line, known, faults);
    }

    private static Told told(LogRecord line) {
        Object[] with = line.getParameters();
        return with != null && with.length == 1 && with[0] instanceof Told told ? told : null;
    }

    private static Told library(LogRecord line) {
        String logger = line.getLoggerName() == null ? "" : line.getLoggerName();
        Told told = Told.of(Happening.LIBRARY).own("logger", logger);
        Matcher code = CODE.matcher(line.getMessage() == null ? "" : line.getMessage());
        return code.find() ? told.own("code", code.group(1)) : told;
    }

    private static List<Fault> faults(Throwable thrown) {
        List<Fault> faults = new ArrayList<>();
        Throwable one = thrown;
        while (one != null && faults.size() < CAUSES_MAX) {
            List<String> at = new ArrayList<>();
            for (StackTraceElement frame : one.getStackTrace()) {
                if (at.size() < FRAMES_MAX) {
                    at.add(
                            frame.getClassName()
                                    + "."
                                    + frame.getMethodName()
                                    + ":"
                                    + frame.getLineNumber());
                }
            }
            faults.add(new Fault(one.getClass().getName(), at));
            one = one.getCause();
        }
        return faults;
    }

    private static String plain(LogRecord line, Told told, List<Fault> faults) {
        StringBuilder text = new StringBuilder(TIME.format(line.getInstant()));
        text.append(' ')
                .append(Weight.of(line.getLevel()).written())
                .append(' ')
                .append(told.what().written());
        told.inOrder()
                .forEach(
                        (field, value) -> text.append(' ').append(field).append('=').append(value));
        text.append(": ").append(told.what().sentence()).append('\n');
        for (Fault fault : faults) {
            text.append("  ").append(fault.type()).append('\n');
            fault.at().forEach(frame -> text.append("    at ").append(frame).append('\n'));
        }
        return text.toString();
    }

    private static String json(LogRecord line, Told told, List<Fault> faults) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("time", TIME.format(line.getInstant()));
            json.writeStringField("level", Weight.of(line.getLevel()).written());
            json.writeStringField("event", told.what().written());
            json.writeObjectFieldStart("fields");
            for (Map.Entry<String, Object> field : told.inOrder().entrySet()) {
                if (field.getValue() instanceof Long number) {
                    json.writeNumberField(field.getKey(), number);
                } else {
                    json.writeStringField(field.getKey(), field.getValue().toString());
                }
            }
            json.writeEndObject();
            if (!faults.isEmpty()) {
                json.writeArrayFieldStart("faults");
                for (Fault fault : faults) {
                    json.writeStartObject();
                    json.writeStringField("type", fault.type());
                    json.writeArrayFieldStart("at");
                    for (String frame : fault.at()) {
                        json.writeString(frame);
                    }
                    json.writeEndArray();
                    json.writeEndObject();
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }
}
