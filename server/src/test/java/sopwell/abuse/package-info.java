/**
 * Hostile clients, with bare sockets, against a running stand: what must be refused, what must not
 * hurt anyone else. {@link sopwell.abuse.AbuseMain} points them at any address.
 */
package sopwell.abuse;
