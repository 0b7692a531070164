package sopwell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The files of this repository, as the tidy tests read them. */
public final class SourceTree {
    private SourceTree() {}

    /**
     * One file.
     *
     * @param path from the root of the repository, with forward slashes
     */
    public record Source(String path, String text) {
        /** Its lines, without their ends. */
        public List<String> lines() {
            return text.lines().toList();
        }

        /**
         * Java source with comments and the insides of literals blanked, line for line the same.
         */
        public String code() {
            return JavaText.blanked(text);
        }

        /** Its place under the root package, such as {@code orders} or {@code web.pages}. */
        public String slice() {
            String marker = "java/sopwell/";
            int from = path.indexOf(marker) + marker.length();
            int to = path.lastIndexOf('/');
            return to < from ? "" : path.substring(from, to).replace('/', '.');
        }

        /** Its name without folders. */
        public String name() {
            return path.substring(path.lastIndexOf('/') + 1);
        }
    }

    /** The folder that holds {@code pom.xml}. */
    public static Path root() {
        Path folder = Path.of(System.getProperty("sopwell.basedir", "")).toAbsolutePath();
        while (folder != null && !Files.exists(folder.resolve("pom.xml"))) {
            folder = folder.getParent();
        }
        Check.that(folder != null, "the tests run inside the repository");
        return folder;
    }

    /** Main sources in Java. */
    public static List<Source> mainJava() {
        return read("server/src/main/java", name -> name.endsWith(".java"));
    }

    /** Test sources in Java. */
    public static List<Source> testJava() {
        return read("server/src/test/java", name -> name.endsWith(".java"));
    }

    /** The templates. */
    public static List<Source> templates() {
        return read("web/templates", name -> name.endsWith(".jte"));
    }

    /** Scripts and style sheets of our own. */
    public static List<Source> scriptsAndStyles() {
        return read("web", name -> name.endsWith(".js") || name.endsWith(".css"));
    }

    /** Words for people: documents, and the texts of the screens. */
    public static List<Source> prose() {
        Predicate<String> markdown = name -> name.endsWith(".md");
        Predicate<String> texts = markdown.or(name -> name.endsWith(".properties"));
        return Stream.of(read("docs", markdown), read("web", texts), top(markdown))
                .flatMap(List::stream)
                .toList();
    }

    /** The files under a folder whose names fit; none when there is no such folder. */
    public static List<Source> read(String folder, Predicate<String> name) {
        Path start = root().resolve(folder);
        if (!Files.isDirectory(start)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(start)) {
            return sources(files, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Source> top(Predicate<String> name) {
        try (Stream<Path> files = Files.list(root())) {
            return sources(files, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Source> sources(Stream<Path> files, Predicate<String> name) {
        return files.filter(Files::isRegularFile)
                .filter(file -> name.test(file.getFileName().toString()))
                .filter(file -> !file.toString().contains("/vendor/"))
                .sorted()
                .map(SourceTree::source)
                .toList();
    }

    private static Source source(Path file) {
        String path = root().relativize(file.toAbsolutePath()).toString().replace('\\', '/');
        try {
            return new Source(path, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
