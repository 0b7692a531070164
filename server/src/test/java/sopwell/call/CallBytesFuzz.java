package sopwell.call;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Any bytes as a call: it reads the same twice, and what was read prints and reads again. */
public final class CallBytesFuzz {
    private static final CallParser PARSER = new CallParser(DemoMenu.read());

    private CallBytesFuzz() {}

    /** One text. */
    public static void fuzzerTestOneInput(byte[] data) {
        String text = new String(data, StandardCharsets.UTF_8);
        Reading reading = PARSER.read(text);
        if (!reading.equals(PARSER.read(text))) {
            throw new AssertionError("reads differently the second time");
        }
        if (reading.refusal().isPresent()) {
            CallRefusal refusal = reading.refusal().get();
            int end = refusal.column() - 1 + refusal.length();
            if (refusal.column() < 1 || end > Math.max(1, text.length())) {
                throw new AssertionError("a refusal points outside: " + refusal);
            }
            return;
        }
        List<Counted> lines = reading.counted();
        if (!PARSER.read(new CallPrinter(PARSER).print(lines)).counted().equals(lines)) {
            throw new AssertionError("what was read prints to something else");
        }
    }
}
