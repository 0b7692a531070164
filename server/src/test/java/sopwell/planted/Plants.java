package sopwell.planted;

import java.util.List;
import sopwell.planted.Plant.Edit;

/** The bugs that a stand must never have, each with the test that finds it. Stateless. */
final class Plants {
    private static final String BATCH = "sopwell/desk/DeskBatch.java";
    private static final String HUB = "sopwell/web/live/BoardHub.java";
    private static final String WRITER = "sopwell/storage/SqliteWriter.java";
    private static final String KEYS_LATER =
            """
                    begin.executeUpdate();
                    for (LogRow row : rows) {
                        try (PreparedStatement key = connection.prepareStatement(
                                "UPDATE events SET key = ? WHERE stand = ? AND seq = ?")) {
                            key.setString(1, row.key());
                            key.setString(2, stand);
                            key.setLong(3, row.seq());
                            key.executeUpdate();
                        }
                    }
                    commit.executeUpdate();
                    return true;
            """;
    private static final String APPEND =
            """
                            List<Recorded> recorded = log.append(draft.entries);
            """;
    private static final String DEADLINE =
            "> TimeUnit.MILLISECONDS.toNanos(rhythm.pongMillisMax())";

    static final List<Plant> ALL =
            List.of(
                    new Plant(
                            "answer-before-commit",
                            "An order is answered before it is on the disk.",
                            List.of(
                                    Edit.java(
                                            BATCH,
                                            APPEND,
                                            "draft.replies.values().forEach(Runnable::run);\n"
                                                    + APPEND)),
                            "sopwell.desk.DeskTest"),
                    new Plant(
                            "shown-before-commit",
                            "A board shows what is not on the disk yet.",
                            List.of(
                                    Edit.java(
                                            BATCH,
                                            APPEND,
                                            "committed.accept(draft.recordedFor.values().stream()"
                                                    + ".flatMap(List::stream).toList());\n"
                                                    + APPEND),
                                    Edit.java(
                                            BATCH,
                                            "                committed.accept(recorded);\n",
                                            "")),
                            "sopwell.desk.DeskTest"),
                    new Plant(
                            "synced-less",
                            "A commit is not forced to the disk.",
                            List.of(
                                    Edit.java(
                                            "sopwell/storage/SqliteFile.java",
                                            "new Options(0, FULL)",
                                            "new Options(0, 1)")),
                            "sopwell.power.PowerTest"),
                    new Plant(
                            "tries-in-memory",
                            "A restart gives whoever guesses PINs all tries again.",
                            List.of(
                                    Edit.java(
                                            "sopwell/access/Kept.java",
                                            "keeper.accept(next);",
                                            "keeper.accept(next.withTries(java.util.Map.of()));")),
                            "sopwell.access.ThrottleTest"),
                    new Plant(
                            "unescaped-name",
                            "A guest's name is put into a page as it is.",
                            List.of(
                                    Edit.template(
                                            "pass/who.jte",
                                            "<span class=\"who\">${row.name()}</span>",
                                            "<span class=\"who\">$unsafe{row.name()}</span>")),
                            "sopwell.web.pages.HostileTextsTest"),
                    new Plant(
                            "keys-not-unique",
                            "Two orders may have one key.",
                            List.of(
                                    Edit.resource(
                                            "schema/0001-log.sql",
                                            "CREATE UNIQUE INDEX events_by_key",
                                            "CREATE INDEX events_by_key")),
                            "sopwell.storage.SqliteLogTest"),
                    new Plant(
                            "frame-off-by-one",
                            "A frame says that it follows on the wrong one.",
                            List.of(
                                    Edit.java(
                                            "sopwell/web/live/LiveBoard.java",
                                            "long prev = shownSeq;",
                                            "long prev = Math.max(0, shownSeq - 1);")),
                            "sopwell.web.live.LiveBoardTest"),
                    new Plant(
                            "outbox-without-end",
                            "What a slow screen has not taken piles up.",
                            List.of(
                                    Edit.java(
                                            "sopwell/web/live/Screen.java",
                                            "if (sending || behind) {\n"
                                                    + "                behind = true;",
                                            "if (behind) {\n                behind = true;")),
                            "sopwell.web.live.ScreenTest"),
                    new Plant(
                            "sent-while-drawing",
                            "A screen that does not read holds up who draws the boards.",
                            List.of(
                                    Edit.java(
                                            "sopwell/web/live/SocketOutlet.java",
                                            "session.getAsyncRemote().sendText(text, result ->"
                                                    + " done.left(result.isOK()));\n"
                                                    + "        } catch (RuntimeException gone)",
                                            "session.getBasicRemote().sendText(text);\n"
                                                    + "            done.left(true);\n"
                                                    + "        } catch (IOException |"
                                                    + " RuntimeException gone)")),
                            "sopwell.web.live.StuckScreenTest"),
                    new Plant(
                            "any-origin",
                            "Another site's page may send changes and open sockets.",
                            List.of(
                                    Edit.java(
                                            "sopwell/web/Doors.java",
                                            "if (isRisky(exchange) && isForeign(exchange, host))",
                                            "if (host.isEmpty() && isForeign(exchange, host))")),
                            "sopwell.web.live.HandshakeTest"),
                    new Plant(
                            "days-of-24-hours",
                            "Every day has 24 hours, also when the clocks are put forward.",
                            List.of(
                                    Edit.java(
                                            "sopwell/orders/Days.java",
                                            "return now.toLocalDate().plusDays(1).atTime(cutHour,"
                                                    + " 0).atZone(now.getZone());",
                                            "return cut.plusHours(24);")),
                            "sopwell.orders.DaysTest"),
                    new Plant(
                            "wall-clock-durations",
                            "The stand's time is the box's, whatever becomes of that.",
                            List.of(
                                    Edit.java(
                                            "sopwell/desk/StandClock.java",
                                            "return waiting\n" + "                ? anchorMs",
                                            "return !waiting\n"
                                                    + "                ? box.millis()")),
                            "sopwell.desk.StandClockTest"),
                    new Plant(
                            "file-copy-backup",
                            "A backup is a copy of the log's file while it is written.",
                            List.of(
                                    Edit.java(
                                            "sopwell/storage/DataFolder.java",
                                            "BackupFile.copy(folder.resolve(LOG), to, stop);",
                                            "Files.copy(folder.resolve(LOG), to,"
                                                    + " StandardCopyOption.REPLACE_EXISTING);")),
                            "sopwell.backup.BackupsTest"),
                    new Plant(
                            "kept-connection",
                            "After an error of the disk the same connection writes on.",
                            List.of(
                                    Edit.java(
                                            "sopwell/storage/SqliteLog.java",
                                            "if (!sound) {",
                                            "if (!sound && closed) {")),
                            "sopwell.power.IoFaultTest"),
                    new Plant(
                            "key-in-another-commit",
                            "An order is on the disk before its key is.",
                            List.of(
                                    Edit.java(
                                            WRITER,
                                            "to.setString(at + 4, row.key());",
                                            "to.setString(at + 4, null);"),
                                    Edit.java(WRITER, "        return true;\n", KEYS_LATER)),
                            "sopwell.power.PowerTest"),
                    new Plant(
                            "no-deadline",
                            "Nothing but the end of a socket takes a screen off the list.",
                            List.of(Edit.java(HUB, DEADLINE, "> Long.MAX_VALUE - 1")),
                            "sopwell.web.live.HalfOpenTest"),
                    new Plant(
                            "idle-time-for-a-deadline",
                            "The server's idle time is trusted to find screens that are gone.",
                            List.of(
                                    Edit.java(HUB, DEADLINE, "> Long.MAX_VALUE - 1"),
                                    Edit.java(
                                            "sopwell/web/live/BoardSocket.java",
                                            "session.setMaxIdleTimeout(0);",
                                            "session.setMaxIdleTimeout(900);")),
                            "sopwell.web.live.HalfOpenTest"));

    private Plants() {}
}
