package sopwell.menu;

import java.util.List;

/**
 * Where work is done. Immutable.
 *
 * @param id letters, digits and hyphens
 * @param hands people or machines that work side by side there, 1 to 20
 * @param load how many pieces one of these hands makes in one go, 1 to 100: a basket of four is one
 *     machine with a load of 4, and takes as long as its slowest piece
 * @param builds whether its screen shows the build board rather than a plain list
 * @param cautions what can hurt there
 */
public record Station(
        String id, LocalText name, int hands, int load, boolean builds, List<Caution> cautions) {
    public Station {
        cautions = List.copyOf(cautions);
    }

    /** A station where nothing is said to hurt. */
    public Station(String id, LocalText name, int hands, int load, boolean builds) {
        this(id, name, hands, load, builds, List.of());
    }
}
