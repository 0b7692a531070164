/**
 * Sopwell: routes calls from a sandwich stand's counter to the hands that make them, and counts
 * what was made.
 *
 * <p>Purpose: the composition root ({@code Main}), its settings, and the two helpers every slice
 * may use. Rules: nothing imports {@code Main}. Threading: see {@code docs/architecture.md}.
 */
package sopwell;
