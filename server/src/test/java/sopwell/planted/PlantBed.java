package sopwell.planted;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.resolve.DirectoryCodeResolver;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import sopwell.crash.StandProcess;

/**
 * A place beside the build in which a bug is put: the changed classes and resources, and a jar that
 * has them too. The sources and the build stay as they are. Belongs to one thread.
 */
final class PlantBed {
    private static final long TEST_MINUTES_MAX = 10;

    /** Where the build puts templates too. */
    private static final String PRECOMPILED = "gg.jte.generated.precompiled";

    private final Path project;
    private final Path bed;
    private final Path classes;
    private final Path jar;

    /**
     * An empty bed.
     *
     * @param project the project's folder, which was built
     * @param bed an empty folder
     */
    PlantBed(Path project, Path bed) throws IOException {
        this.project = project;
        this.bed = bed;
        this.classes = Files.createDirectories(bed.resolve("classes"));
        this.jar = bed.resolve("sopwell.jar");
        Files.copy(Path.of(StandProcess.jar()), jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Puts a bug in; throws when its place is no longer there, or it doesn't compile. */
    void put(Plant plant) throws IOException {
        Path sources = Files.createDirectories(bed.resolve("sources"));
        List<String> changed = new ArrayList<>();
        boolean templates = false;
        for (Plant.Edit edit : plant.edits()) {
            if (edit.found(project) != 1) {
                throw new IOException(plant.name() + ": its place in " + edit.file() + " moved");
            }
            Path to = place(edit, sources);
            String before =
                    Files.exists(to) ? Files.readString(to) : Files.readString(edit.in(project));
            Files.createDirectories(to.getParent());
            Files.writeString(to, before.replace(edit.find(), edit.put()));
            templates |= edit.kind() == Plant.Kind.TEMPLATE;
            if (edit.kind() == Plant.Kind.JAVA) {
                changed.add(to.toString());
            }
        }
        if (!changed.isEmpty()) {
            compile(plant, changed);
        }
        if (templates) {
            templates(sources);
        }
        pack();
    }

    private Path place(Plant.Edit edit, Path sources) throws IOException {
        return switch (edit.kind()) {
            case JAVA -> sources.resolve(edit.file());
            case RESOURCE -> classes.resolve(edit.file());
            case TEMPLATE -> {
                Path copy = sources.resolve("templates");
                if (!Files.exists(copy)) {
                    copyAll(project.resolve(Plant.Kind.TEMPLATE.root()), copy);
                }
                yield copy.resolve(edit.file());
            }
        };
    }

    /** Runs a class of tests over what was put in: one of the ends of {@link RunTests}. */
    int run(String test, Path said) throws IOException, InterruptedException {
        List<String> command =
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1g",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Dsopwell.jar=" + jar,
                        "-Dsopwell.basedir=" + project,
                        "-cp",
                        classes + ":" + System.getProperty("java.class.path"),
                        RunTests.class.getName(),
                        test);
        Process process =
                new ProcessBuilder(command)
                        .directory(project.toFile())
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        if (!process.waitFor(TEST_MINUTES_MAX, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            return RunTests.RED; // A test that never ends has found something too.
        }
        return process.exitValue();
    }

    private void compile(Plant plant, List<String> changed) throws IOException {
        List<String> arguments =
                new ArrayList<>(
                        List.of(
                                "-nowarn",
                                "-proc:none",
                                "-parameters",
                                "--release",
                                "17",
                                "-d",
                                classes.toString(),
                                "-cp",
                                System.getProperty("java.class.path")));
        arguments.addAll(changed);
        int faults =
                ToolProvider.getSystemJavaCompiler()
                        .run(null, null, null, arguments.toArray(String[]::new));
        if (faults != 0) {
            throw new IOException(plant.name() + " does not compile");
        }
    }

    private void templates(Path sources) {
        TemplateEngine engine =
                TemplateEngine.create(
                        new DirectoryCodeResolver(sources.resolve("templates")),
                        classes,
                        ContentType.Html,
                        PlantBed.class.getClassLoader(),
                        PRECOMPILED);
        engine.setTrimControlStructures(true);
        List<String> path = List.of(System.getProperty("java.class.path").split(":", -1));
        engine.precompileAll(path);
    }

    private void pack() throws IOException {
        try (FileSystem files =
                        FileSystems.newFileSystem(URI.create("jar:" + jar.toUri()), Map.of());
                Stream<Path> changed = Files.walk(classes)) {
            for (Path one : changed.filter(Files::isRegularFile).toList()) {
                Path to = files.getPath("/" + classes.relativize(one));
                Files.createDirectories(to.getParent());
                Files.copy(one, to, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path one : files.toList()) {
                Path target = to.resolve(from.relativize(one).toString());
                if (Files.isDirectory(one)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(one, target);
                }
            }
        }
    }
}
