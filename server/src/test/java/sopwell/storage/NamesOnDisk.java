package sopwell.storage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Looks for a text in the bytes of every file of a folder, whatever they mean. Stateless. */
public final class NamesOnDisk {
    private NamesOnDisk() {}

    /** The files that have the text in them. */
    public static List<String> with(Path folder, String text) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        List<String> found = new ArrayList<>();
        for (Path file : files) {
            String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
            if (bytes.contains(text)) {
                found.add(file.getFileName().toString());
            }
        }
        return found;
    }
}
