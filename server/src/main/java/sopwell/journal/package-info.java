/**
 * What a running stand tells whoever looks after it: one line a happening, out of a fixed list,
 * with numbers, ids and fixed words beside it. Nobody's name, nothing that was typed, and no whole
 * address gets in, because there is no way to put them there.
 */
package sopwell.journal;
