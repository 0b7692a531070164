package sopwell.damage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;

/** The same with as many damages as asked for: {@code DamageMain [cases] [seed]}. */
public final class DamageMain {
    private DamageMain() {}

    /** Prints what it came to; ends with an error when a damage was not found, or was none. */
    public static void main(String[] args) throws IOException, SQLException {
        int cases = args.length > 0 ? Integer.parseInt(args[0]) : 1_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
        System.out.println(cases + " damages, seed " + seed);
        Path work = Files.createTempDirectory("sopwell-damage");
        DamageRun.Result result = new DamageRun(work, seed).run(cases);
        System.out.println(result);
        if (!result.silent().isEmpty() || !result.falseAlarms().isEmpty()) {
            throw new AssertionError("a damage was not found, or was none");
        }
    }
}
