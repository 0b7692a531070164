/**
 * Who may do what.
 *
 * <p>Purpose: people and their roles, paired devices, tokens of programs, sessions, and the two
 * tables that say what each may do. Rules: no I/O; the clock, the chance and the slow hashing are
 * handed in, and what is kept is handed out to be kept. Secrets are never kept, only their hashes.
 * Threading: {@link sopwell.access.Access} is thread-safe, the rest is immutable. What breaks if
 * this changes: who gets in.
 */
package sopwell.access;
