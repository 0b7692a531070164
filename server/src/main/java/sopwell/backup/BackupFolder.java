package sopwell.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Logger;
import java.util.stream.Stream;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.storage.BackupFile;
import sopwell.storage.BackupRule;

/**
 * The folder with one stand's backups, which may hold others' too. Names tell when they were made,
 * by universal time: {@code millrace-20261128T213000.backup}. What is not finished yet is called
 * {@code ….backup.part}, and counts for nothing. Not thread-safe.
 */
final class BackupFolder {
    private static final Logger LOGGER = Logger.getLogger(BackupFolder.class.getName());
    private static final String ENDING = ".backup";
    private static final String PART = ".part";
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

    private final Path folder;
    private final String stand;

    /** A finished backup, by its name. */
    record Named(Path file, Instant at) {}

    BackupFolder(Path folder, String stand) {
        this.folder = folder;
        this.stand = stand;
    }

    Path path() {
        return folder;
    }

    boolean isThere() {
        return Files.isDirectory(folder);
    }

    /** The name of one that is made now. */
    Path fresh(Instant at) {
        return folder.resolve(stand + "-" + TIME.format(at.atOffset(ZoneOffset.UTC)) + ENDING);
    }

    /** The name that it has until it is finished. */
    static Path part(Path file) {
        return file.resolveSibling(file.getFileName() + PART);
    }

    /** The finished ones, newest first. */
    List<Named> all() {
        return list(ENDING).stream()
                .flatMap(file -> at(file).map(at -> new Named(file, at)).stream())
                .sorted(Comparator.comparing(Named::at).reversed())
                .toList();
    }

    /** The newest that can be read; one that can't be is said, and passed over. */
    Optional<BackupState.Good> newest() {
        for (Named named : all()) {
            try {
                BackupFile.Made made = BackupFile.made(named.file());
                return Optional.of(
                        new BackupState.Good(
                                named.file().getFileName().toString(),
                                made.atMs(),
                                made.lastSeq(),
                                Files.size(named.file())));
            } catch (LogFault | IOException damaged) {
                Told.of(Happening.BACKUP_DAMAGED)
                        .own("file", named.file().toString())
                        .fault(damaged)
                        .to(LOGGER);
            }
        }
        return Optional.empty();
    }

    /** Throws away what was never finished; says whether there was any. */
    boolean sweep() {
        List<Path> parts =
                list(ENDING + PART).stream().filter(part -> at(whole(part)).isPresent()).toList();
        parts.forEach(BackupFolder::delete);
        return !parts.isEmpty();
    }

    /** What a part would be called once it is finished. */
    private static Path whole(Path part) {
        String name = part.getFileName().toString();
        return part.resolveSibling(name.substring(0, name.length() - PART.length()));
    }

    /** Throws away what the rule does not keep. */
    void prune(BackupRule rule, ZoneId zone) {
        List<Named> all = all();
        Set<Instant> kept = KeepRule.kept(all.stream().map(Named::at).toList(), rule, zone);
        all.stream().filter(one -> !kept.contains(one.at())).forEach(one -> delete(one.file()));
    }

    private List<Path> list(String ending) {
        if (!isThere()) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith(stand + "-"))
                    .filter(file -> file.getFileName().toString().endsWith(ending))
                    .toList();
        } catch (IOException gone) {
            Told.of(Happening.BACKUP_DAMAGED)
                    .own("folder", folder.toString())
                    .fault(gone)
                    .to(LOGGER);
            return List.of();
        }
    }

    private Optional<Instant> at(Path file) {
        String name = file.getFileName().toString();
        String time = name.substring(stand.length() + 1, name.length() - ENDING.length());
        try {
            return Optional.of(LocalDateTime.parse(time, TIME).toInstant(ZoneOffset.UTC));
        } catch (DateTimeParseException another) {
            return Optional.empty();
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            Told.of(Happening.BACKUP_DAMAGED)
                    .own("staysThere", file.toString())
                    .fault(stays)
                    .to(LOGGER);
        }
    }
}
