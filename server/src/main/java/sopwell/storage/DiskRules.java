package sopwell.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What a log must lie on and be written with, lest commits are lost. Stateless. */
final class DiskRules {
    /** Write-ahead logging needs memory shared between processes, which these can't give. */
    private static final Set<String> REMOTE =
            Set.of(
                    "nfs",
                    "nfs4",
                    "cifs",
                    "smb3",
                    "smbfs",
                    "afs",
                    "ceph",
                    "glusterfs",
                    "9p",
                    "fuse.sshfs",
                    "fuse.glusterfs",
                    "fuse.rclone",
                    "davfs",
                    "fuse.davfs2");

    /** Earlier ones can damage a log when it is written and moved at once. */
    private static final List<Integer> SQLITE_MIN = List.of(3, 51, 3);

    private DiskRules() {}

    static void refuseUnsafe(Path folder) throws IOException, SQLException {
        String type = Files.getFileStore(folder).type();
        if (isRemote(type)) {
            throw new FolderFault(
                    folder
                            + " is on a network disk ("
                            + type
                            + "); the log must be on a local one.");
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = connection.createStatement();
                ResultSet version = statement.executeQuery("SELECT sqlite_version()")) {
            if (!version.next() || isTooOld(version.getString(1))) {
                throw new FolderFault(
                        "This SQLite is older than 3.51.3, which can damage a log; use Sopwell's"
                                + " own jar.");
            }
        }
    }

    static boolean isRemote(String type) {
        return REMOTE.contains(type);
    }

    static boolean isTooOld(String version) {
        List<Integer> parts =
                Stream.of(version.split("\\.")).limit(3).map(Integer::valueOf).toList();
        for (int i = 0; i < SQLITE_MIN.size(); i++) {
            int part = i < parts.size() ? parts.get(i) : 0;
            if (part != SQLITE_MIN.get(i)) {
                return part < SQLITE_MIN.get(i);
            }
        }
        return false;
    }
}
