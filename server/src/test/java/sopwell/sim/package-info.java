/**
 * Whole days of the stand, made up from a seed: rush, mistakes, faults of the disk, crashes and
 * slow screens, in one thread and far faster than time. After every step a validator that has its
 * own books, kept from the raw events alone, looks at everything.
 */
package sopwell.sim;
