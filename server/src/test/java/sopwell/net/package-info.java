/**
 * A network that goes wrong, of our own making: a link that delays, chokes, falls silent, breaks
 * off, loses answers, doubles requests and changes their order; network namespaces; and what is
 * held against them, the packaged server with screens, tills and browsers at it.
 */
package sopwell.net;
