/**
 * Figures for programs that watch over a stand: counted here without a library, and written in the
 * Prometheus text format by one when they are asked for. No figure holds anything personal.
 */
package sopwell.metrics;
