package sopwell;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import sopwell.backup.Restore;
import sopwell.log.LogFault;
import sopwell.tls.StandTls;

/** The program: reads the command line and runs what it asks for. */
public final class Main {
    private static final int EXIT_OK = 0;
    private static final int EXIT_REFUSED = 2;
    private static final Logger LOGGER = Logger.getLogger(Main.class.getName());

    private Main() {}

    /** Ends with 0 when stopped, 2 when what was asked for can't be done. */
    public static void main(String[] args) throws InterruptedException {
        StandTls.refuseRenegotiation();
        int code = run(args);
        if (code != EXIT_OK) {
            System.exit(code);
        }
    }

    private static int run(String[] args) throws InterruptedException {
        Config.Serve serve = new Config.Serve();
        Config.Owner owner = new Config.Owner();
        Config.Rehearse rehearse = new Config.Rehearse();
        Config.CheckBooks check = new Config.CheckBooks();
        Config.Rebuild rebuild = new Config.Rebuild();
        Config.Erase erase = new Config.Erase();
        Config.Restore restore = new Config.Restore();
        Config.Export export = new Config.Export();
        Config.Import records = new Config.Import();
        Config.Backtest backtest = new Config.Backtest();
        Map<Object, Run> runs =
                Map.of(
                        serve, () -> serve(serve),
                        owner, () -> setOwner(owner),
                        rehearse, Main::rehearse,
                        check, () -> books(check.data).check(),
                        rebuild, () -> books(rebuild.data).rebuild(),
                        erase, () -> new Erasure(erase, InstantSource.system(), System.out).run(),
                        restore, () -> restored(restore),
                        export, () -> new Exporting(export, System.out).run(),
                        records, () -> imported(records),
                        backtest, () -> new Backtest(backtest, System.out).run());
        CommandLine line = new CommandLine(new Config());
        askedOf(
                        args,
                        List.of(
                                serve, owner, rehearse, check, rebuild, erase, restore, records,
                                export, backtest))
                .forEach(line::addSubcommand);
        try {
            ParseResult parsed = line.parseArgs(args);
            if (CommandLine.printHelpIfRequested(parsed)) {
                return EXIT_OK;
            }
            if (!parsed.hasSubcommand()) {
                line.usage(System.err);
                return EXIT_REFUSED;
            }
            return orRefused(runs.get(parsed.subcommand().commandSpec().userObject()));
        } catch (CommandLine.ParameterException wrong) {
            System.err.println(wrong.getMessage());
            wrong.getCommandLine().usage(System.err);
            return EXIT_REFUSED;
        }
    }

    /** The one that is named first, or all: describing all of them takes a fifth of a start. */
    private static List<Object> askedOf(String[] args, List<Object> commands) {
        List<Object> named =
                commands.stream()
                        .filter(command -> args.length > 0 && name(command).equals(args[0]))
                        .toList();
        return named.isEmpty() ? commands : named;
    }

    private static String name(Object command) {
        return command.getClass().getAnnotation(CommandLine.Command.class).name();
    }

    private static int orRefused(Run run) throws InterruptedException {
        try {
            run.run();
            return EXIT_OK;
        } catch (StartRefused refused) {
            if (!refused.getMessage().isEmpty()) {
                System.err.println(refused.getMessage());
            }
            return EXIT_REFUSED;
        } catch (LogFault fault) {
            LOGGER.log(Level.FINE, "start refused", fault);
            System.err.println(fault.getMessage());
            return EXIT_REFUSED;
        }
    }

    private static Books books(Path data) {
        return new Books(data, System.out, InstantSource.system());
    }

    /** A password that is typed is not shown. */
    private static void setOwner(Config.Owner asked) throws StartRefused {
        String typed = "";
        if (asked.passwordFile == null) {
            char[] password =
                    Optional.ofNullable(System.console())
                            .map(console -> console.readPassword("The owner's new password: "))
                            .orElseThrow(Main::noTerminal);
            typed = new String(password);
        }
        StandAccess.setOwner(asked, typed, InstantSource.system());
        System.out.println("The owner's password is set. Everybody has to sign in from now on.");
    }

    private static StartRefused noTerminal() {
        return new StartRefused("There is no terminal to ask at. Use --password-file.");
    }

    private static void rehearse() throws StartRefused {
        new Rehearsal(clocks(), System.out).play();
    }

    private static void imported(Config.Import asked) throws StartRefused {
        new Import(asked, InstantSource.system(), System.out).run();
    }

    private static void restored(Config.Restore asked) {
        new Restore(asked.from, asked.data, InstantSource.system(), System.out).run(asked.replace);
    }

    private static void serve(Config.Serve asked) throws StartRefused, InterruptedException {
        Journal journal = Journal.begin(asked.log, System.out);
        Ahead.loadLibraries();
        RunningStand stand;
        try {
            stand = RunningStand.start(asked, clocks(), DiskWatch.Disk.of(asked.data));
        } catch (StartRefused | LogFault refused) {
            throw journal.refused(refused.getMessage());
        }
        Thread closer = new Thread(stand::close, "closer");
        Runtime.getRuntime().addShutdownHook(closer);
        journal.listening(stand.address(), stand.fingerprint());
        stand.awaitClosed();
    }

    private static RunningStand.Clocks clocks() {
        return new RunningStand.Clocks(
                InstantSource.system(), System::nanoTime, Uptime.ofBox(System::nanoTime));
    }

    /** What a subcommand does. */
    private interface Run {
        void run() throws StartRefused, InterruptedException;
    }
}
