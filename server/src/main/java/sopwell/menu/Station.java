package sopwell.menu;

/**
 * Where work is done. Immutable.
 *
 * @param id letters, digits and hyphens
 * @param hands people or machines that work side by side there, 1 to 20
 * @param builds whether its screen shows the build board rather than a plain list
 */
public record Station(String id, LocalText name, int hands, boolean builds) {}
