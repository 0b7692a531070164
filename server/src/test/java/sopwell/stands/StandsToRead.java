package sopwell.stands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes made stands and what was forecast of them, for other programs to forecast and score:
 * {@code StandsToRead DIR [seeds] [origins]}, then {@code Rscript server/src/test/r/stands.R DIR}.
 */
public final class StandsToRead {
    private static final int SEEDS = 2;
    private static final int ORIGINS = 60;

    private StandsToRead() {}

    /** Writes two files a stand. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        int seeds = args.length > 1 ? Integer.parseInt(args[1]) : SEEDS;
        int origins = args.length > 2 ? Integer.parseInt(args[2]) : ORIGINS;
        for (MadeStand.Group group : MadeStand.Group.values()) {
            for (int seed = 1; seed <= seeds; seed++) {
                write(folder, group, seed, origins);
            }
        }
    }

    private static void write(Path folder, MadeStand.Group group, int seed, int origins)
            throws IOException {
        MadeStand stand = new MadeStand(group, seed);
        List<String> forecasts = new ArrayList<>();
        forecasts.add("origin,horizon,name,q50,q75,q90,q95,came,scale");
        StandScore score =
                new StandScore(
                        stand,
                        origins,
                        one ->
                                forecasts.add(
                                        String.format(
                                                Locale.ROOT,
                                                "%d,%d,%s,%d,%d,%d,%d,%d,%.12g",
                                                one.origin() + 1,
                                                one.horizon(),
                                                one.name(),
                                                one.values().get(0),
                                                one.values().get(1),
                                                one.values().get(2),
                                                one.values().get(3),
                                                one.came(),
                                                one.scale())));
        List<String> sales = new ArrayList<>();
        sales.add(String.join(",", MadeStand.names()));
        for (int day = 0; day < stand.days().size(); day++) {
            List<String> row = new ArrayList<>();
            for (String name : MadeStand.names()) {
                row.add(Integer.toString(score.sold(name, day)));
            }
            sales.add(String.join(",", row));
        }
        String base = group.name().toLowerCase(Locale.ROOT) + "-" + seed;
        Files.write(folder.resolve(base + "-sales.csv"), sales);
        Files.write(folder.resolve(base + "-ours.csv"), forecasts);
    }
}
