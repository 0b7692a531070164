package sopwell.web.pages;

import sopwell.web.T;

/**
 * How one screen wants to be drawn: its own settings, kept in its cookies. Immutable.
 *
 * @param t the texts in the screen's language
 * @param theme {@code light}, {@code dark} or {@code auto}
 * @param distanceMetres from how far it is read, 1 to 3
 * @param paperMillimetres how wide its paper roll is, 80 or 58
 * @param setup what was set for it on its own page
 * @param stand the stand's name
 * @param zone where the stand is, for its clock
 * @param path the page's own path, to which a change of settings returns
 * @param rest what the page's address says besides its path and settings, or empty
 * @param assets the version that static files are asked for under
 * @param open whether the stand is open to everybody at its machine
 * @param signedIn the name of who is signed in, or empty
 */
public record Screen(
        T t,
        String theme,
        int distanceMetres,
        int paperMillimetres,
        Setup setup,
        String stand,
        String zone,
        String path,
        String rest,
        String assets,
        boolean open,
        String signedIn) {
    /** The page's own address. */
    public String here() {
        return rest.isEmpty() ? path : path + "?" + rest;
    }

    /** The address that signs somebody in and comes back here. */
    public String signIn() {
        return BackPath.signIn(here());
    }

    /** The page's own address with a setting changed. */
    public String with(String setting, Object value) {
        return path + "?" + (rest.isEmpty() ? "" : rest + "&") + setting + "=" + value;
    }

    /** The same screen at another address, for an answer to what was sent elsewhere. */
    Screen at(String otherPath, String otherRest) {
        return new Screen(
                t,
                theme,
                distanceMetres,
                paperMillimetres,
                setup,
                stand,
                zone,
                otherPath,
                otherRest,
                assets,
                open,
                signedIn);
    }

    /** Where a static file is. */
    public String asset(String name) {
        return "/static/" + assets + "/" + name;
    }
}
