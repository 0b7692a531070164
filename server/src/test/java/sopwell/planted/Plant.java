package sopwell.planted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A bug to be put in. Immutable.
 *
 * @param name what it is called on the command line
 * @param says what is wrong with it
 * @param edits what is changed, in files under the sources
 * @param test the class of tests that must find it
 */
record Plant(String name, String says, List<Edit> edits, String test) {
    private static final Path JAVA = Path.of("server", "src", "main", "java");
    private static final Path RESOURCES = Path.of("server", "src", "main", "resources");
    private static final Path TEMPLATES = Path.of("web", "templates");

    /** Where an edited file belongs. */
    enum Kind {
        JAVA(Plant.JAVA),
        RESOURCE(Plant.RESOURCES),
        TEMPLATE(Plant.TEMPLATES);

        private final Path root;

        Kind(Path root) {
            this.root = root;
        }

        Path root() {
            return root;
        }
    }

    /**
     * One change of one file.
     *
     * @param file below its kind's root
     * @param find what stands there once
     * @param put what is put in its place
     */
    record Edit(Kind kind, String file, String find, String put) {
        static Edit java(String file, String find, String put) {
            return new Edit(Kind.JAVA, file, find, put);
        }

        static Edit resource(String file, String find, String put) {
            return new Edit(Kind.RESOURCE, file, find, put);
        }

        static Edit template(String file, String find, String put) {
            return new Edit(Kind.TEMPLATE, file, find, put);
        }

        /** The file below the project's folder. */
        Path in(Path project) {
            return project.resolve(kind.root()).resolve(file);
        }

        /** How often the file has what is to be found. */
        int found(Path project) throws IOException {
            String text = Files.readString(in(project));
            int count = 0;
            for (int at = text.indexOf(find); at >= 0; at = text.indexOf(find, at + 1)) {
                count++;
            }
            return count;
        }
    }
}
