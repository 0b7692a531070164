package sopwell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sopwell.journal.Lines;

/** What the command line asks for. Belongs to the start-up thread. */
@Command(
        name = "sopwell",
        mixinStandardHelpOptions = true,
        version = "Sopwell " + Version.NUMBER,
        description = "Takes a stand's calls to its kitchen, and counts what was made.",
        synopsisSubcommandLabel =
                "serve|owner|rehearse|check|rebuild|erase|restore|import|export|backtest")
final class Config {
    /** What an empty data folder is filled with. */
    enum StartWith {
        demo,
        lunch,
        menu,
        nothing
    }

    /** What works on a stand's folder. */
    abstract static class InFolder {
        @Option(
                names = "--data",
                paramLabel = "DIR",
                defaultValue = "sopwell-data",
                description = "The folder that holds the stand: ${DEFAULT-VALUE}.")
        Path data;
    }

    /** {@code sopwell rehearse}. */
    @Command(
            name = "rehearse",
            mixinStandardHelpOptions = true,
            description =
                    "Runs a stand for a moment over a folder that is thrown away, and says whether"
                            + " all is well on this box.")
    static final class Rehearse {}

    /** {@code sopwell owner}. */
    @Command(
            name = "owner",
            mixinStandardHelpOptions = true,
            description =
                    "Sets the owner's password of a stand that does not run, and forgets all wrong"
                            + " tries. From then on everybody has to sign in.")
    static final class Owner extends InFolder {
        @Option(
                names = "--password-file",
                paramLabel = "FILE",
                description = "A file with the password in its first line; else it is asked for.")
        Path passwordFile;
    }

    /** {@code sopwell check}. */
    @Command(
            name = "check",
            mixinStandardHelpOptions = true,
            description =
                    "Reads the whole log of a stand that does not run, and says whether what is"
                            + " kept of past days is what the log says.")
    static final class CheckBooks extends InFolder {}

    /** {@code sopwell rebuild}. */
    @Command(
            name = "rebuild",
            mixinStandardHelpOptions = true,
            description = "Counts the past days of a stand that does not run anew from its log.")
    static final class Rebuild extends InFolder {}

    /** {@code sopwell erase}. */
    @Command(
            name = "erase",
            mixinStandardHelpOptions = true,
            description =
                    "Takes people's names out of the log of a stand that does not run; numbers,"
                            + " amounts and times stay. There is no way back.")
    static final class Erase extends InFolder {
        @Option(
                names = "--before",
                paramLabel = "DATE",
                description =
                        "Guests' names, and those of cashiers who are not on the roster, of all"
                                + " days before this one, such as 2026-11-01.")
        LocalDate before;

        @Option(
                names = "--person",
                paramLabel = "ID",
                description = "The name of somebody who was taken off the roster, such as s3.")
        String person;

        @Option(
                names = "--name",
                paramLabel = "TEXT",
                description = "This name, wherever it stands: orders, tills, reasons, questions.")
        String name;
    }

    /** {@code sopwell restore}. */
    @Command(
            name = "restore",
            mixinStandardHelpOptions = true,
            description =
                    "Makes a folder what a backup holds, after reading all of the backup. A stand"
                            + " that is in the folder does not give way unless that is asked for.")
    static final class Restore extends InFolder {
        @Option(
                names = "--from",
                paramLabel = "FILE",
                required = true,
                description = "The backup, such as millrace-20261128T213000.backup.")
        Path from;

        @Option(
                names = "--replace",
                description =
                        "A stand that is in the folder gives way; its files are kept, in a folder"
                                + " within it.")
        boolean replace;
    }

    /** What can be exported of a stand's days. */
    enum What {
        mix,
        waits,
        till,
        exceptions
    }

    /** As what it is written. */
    enum Format {
        csv,
        json
    }

    /** {@code sopwell export}. */
    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            description =
                    "Writes what is known of a stand's days as a table, from its log as it is now;"
                            + " the stand may run meanwhile and is not disturbed.")
    static final class Export extends InFolder {
        @Option(
                names = "--what",
                paramLabel = "WHAT",
                required = true,
                description = "${COMPLETION-CANDIDATES}.")
        What what;

        @Option(
                names = "--from",
                paramLabel = "DATE",
                required = true,
                description = "The first day, such as 2026-11-01.")
        LocalDate from;

        @Option(
                names = "--to",
                paramLabel = "DATE",
                description = "The last day; the first alone when left out.")
        LocalDate to;

        @Option(
                names = "--format",
                paramLabel = "FORMAT",
                defaultValue = "csv",
                description = "${COMPLETION-CANDIDATES}: ${DEFAULT-VALUE}.")
        Format format;

        @Option(
                names = "--out",
                paramLabel = "FILE",
                required = true,
                description = "The file that is written; one that is there is replaced.")
        Path out;
    }

    /** {@code sopwell import}. */
    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description =
                    "Takes an owner's old records into a stand that does not run, so that its"
                            + " forecasts know them. A day that is kept already is left as it is.")
    static final class Import extends InFolder {
        @Option(
                names = "--history",
                paramLabel = "DIR",
                required = true,
                description = "The folder with lines.csv, and days.csv, outs.csv, weather.csv.")
        Path history;

        @Option(
                names = "--replace",
                description = "Days that are kept with other numbers are replaced, not refused.")
        boolean replace;
    }

    /** {@code sopwell backtest}. */
    @Command(
            name = "backtest",
            mixinStandardHelpOptions = true,
            description =
                    "Forecasts past days of a folder of records from the days before them, and"
                            + " writes a line for each day, item, modifier and quantile.")
    static final class Backtest {
        @Option(
                names = "--history",
                paramLabel = "DIR",
                required = true,
                description = "The folder with lines.csv, and days.csv, outs.csv, weather.csv.")
        Path history;

        @Option(
                names = "--origins",
                paramLabel = "N",
                defaultValue = "60",
                description = "From how many of the last days is forecast: ${DEFAULT-VALUE}.")
        int origins;

        @Option(
                names = "--horizons",
                paramLabel = "DAYS",
                defaultValue = "1-5",
                description = "How many open days ahead, 14 at most: ${DEFAULT-VALUE}.")
        String horizons;

        @Option(
                names = "--out",
                paramLabel = "FILE",
                required = true,
                description = "The file that is written.")
        Path out;
    }

    /** {@code sopwell serve}. */
    @Command(
            name = "serve",
            mixinStandardHelpOptions = true,
            description = "Runs the stand until it is stopped.")
    static final class Serve extends InFolder {
        @Option(
                names = "--host",
                paramLabel = "HOST",
                defaultValue = "127.0.0.1",
                description = "The address to listen on: ${DEFAULT-VALUE}, this machine alone.")
        String host;

        @Option(
                names = "--port",
                paramLabel = "PORT",
                defaultValue = "8080",
                description = "The port: ${DEFAULT-VALUE}; 0 picks a free one.")
        int port;

        @Option(
                names = "--name",
                paramLabel = "NAME",
                description = "A further name by which screens call this machine; may be repeated.")
        List<String> names = new ArrayList<>();

        @Option(
                names = "--connections-per-address",
                paramLabel = "N",
                defaultValue = "" + Limits.CONNECTIONS_PER_ADDRESS_MAX,
                description =
                        "Connections that one address may have at once: ${DEFAULT-VALUE}. More are"
                                + " needed only when many devices come through one address.")
        int connectionsPerAddress = Limits.CONNECTIONS_PER_ADDRESS_MAX;

        @Option(
                names = "--owner-password-file",
                paramLabel = "FILE",
                description =
                        "A file with the owner's password in its first line, which is set when"
                                + " nobody has one yet.")
        Path ownerPasswordFile;

        @Option(
                names = "--tls",
                description =
                        "Speak https, with a certificate of the stand's own, also on this machine"
                                + " alone; on any other address that is so by itself.")
        boolean tls;

        @Option(
                names = "--tls-keystore",
                paramLabel = "FILE",
                description = "Speak https with this PKCS #12 or JKS key store.")
        Path keyStore;

        @Option(
                names = "--tls-keystore-password-file",
                paramLabel = "FILE",
                description = "The file that holds the key store's password, and nothing else.")
        Path keyStorePasswordFile;

        @Option(
                names = "--plain-http",
                description =
                        "Speak http to other machines too: whoever shares the network can read"
                                + " and change everything, and tablets can't work offline.")
        boolean plainHttp;

        @Option(
                names = "--start-with",
                paramLabel = "WHAT",
                defaultValue = "menu",
                description =
                        "Fills an empty folder: demo (eight invented weeks, and a lunch under way),"
                                + " lunch (the lunch alone), menu (the demo's menu alone), nothing"
                                + " (menu.json and stand.json must be there): ${DEFAULT-VALUE}.")
        StartWith startWith;

        @Option(
                names = "--log",
                paramLabel = "FORM",
                defaultValue = "plain",
                description =
                        "How what happens is written to standard error: plain, or json, one object"
                                + " a line: ${DEFAULT-VALUE}.")
        Lines.Form log = Lines.Form.plain;

        @Option(
                names = "--accept-loss",
                description =
                        "Goes on with what is left of a log that lost its end; without it such a"
                                + " stand does not start.")
        boolean acceptLoss;
    }
}
