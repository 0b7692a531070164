/**
 * What a stand sells.
 *
 * <p>Purpose: items, sizes, modifier groups, the words they are called by, prices, stations and
 * build steps, and the checks that a menu must pass before it takes effect. Rules: everything a
 * screen or the call parser knows about food comes from here; pure. Threading: a {@link
 * sopwell.menu.Menu} is immutable and shared freely.
 */
package sopwell.menu;
