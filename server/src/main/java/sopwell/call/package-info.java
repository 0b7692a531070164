/**
 * The call line: from what a guest said to lines of an order, and back.
 *
 * <p>Purpose: {@link sopwell.call.CallParser} reads a call by the words of one menu, {@link
 * sopwell.call.CallPrinter} writes it in its shortest form, {@link sopwell.call.ReadBack} says it
 * in full words. Rules: imports the menu only; knows no food and no language of its own, every word
 * is the menu's; a call that can't be read is a {@link sopwell.call.CallRefusal}, never an
 * exception; places in a text are 1-based columns, counted in UTF-16 units of the text as typed,
 * and 0 means "no place"; reading what was printed gives what was printed. Threading: everything
 * here is immutable or local to one call. What breaks if this changes: the counter's word board,
 * which marks places and greys out words by what is found here, and calls that wait in a browser.
 */
package sopwell.call;
