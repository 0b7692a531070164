/** The packaged stand on a box whose clock is put forward and back while it runs. */
package sopwell.faked;
