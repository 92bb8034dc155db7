/**
 * Mathematics that knows nothing of rivers: the propagator of one stretch of water, compensated sums. Read
 * {@link org.silverwake.model.numerics.Propagator} first. Rates 1/s, times s, loads kg/s.
 */
package org.silverwake.model.numerics;
