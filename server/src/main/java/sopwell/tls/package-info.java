/**
 * Certificates and what a stand needs to speak TLS.
 *
 * <p>Purpose: a certificate authority of the stand's own and the certificate it signs, made on
 * first use and renewed unattended, or a key store that the owner gives. Rules: TLS 1.2 and 1.3
 * with authenticated encryption only; private keys leave this package only to be written by whoever
 * keeps the data folder. Threading: each type says so. What breaks if this changes: tablets that
 * trust the stand.
 */
package sopwell.tls;
