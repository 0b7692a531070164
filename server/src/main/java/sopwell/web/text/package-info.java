/**
 * The words on the screens.
 *
 * <p>Purpose: the bundles of both languages, and sentences for every refusal. Rules: a word that a
 * person reads on a screen stands in a bundle or comes from the menu, never in code; both bundles
 * have the same keys. Threading: everything here is immutable.
 */
package sopwell.web.text;
