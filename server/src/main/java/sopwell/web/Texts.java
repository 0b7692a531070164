package sopwell.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import sopwell.Check;
import sopwell.menu.Lang;

/** The bundles of every language of the screens, read once. Immutable, thread-safe. */
public final class Texts {
    private final Map<Lang, T> languages = new EnumMap<>(Lang.class);

    private Texts() {}

    /** Reads the bundles from the class path; a bundle that is not there is a fault. */
    public static Texts load() {
        Texts texts = new Texts();
        for (Lang lang : Lang.values()) {
            texts.languages.put(lang, new T(lang, read(T.code(lang))));
        }
        return texts;
    }

    /** The texts in one language. */
    public T in(Lang lang) {
        return languages.get(lang);
    }

    private static Map<String, String> read(String code) {
        String name = "/web/text/" + code.toLowerCase(Locale.ROOT) + ".properties";
        Properties properties = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream(name)) {
            Check.that(in != null, "both bundles are on the class path");
            Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
            properties.load(reader);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        Map<String, String> values = new HashMap<>();
        properties.stringPropertyNames().forEach(k -> values.put(k, properties.getProperty(k)));
        return values;
    }
}
