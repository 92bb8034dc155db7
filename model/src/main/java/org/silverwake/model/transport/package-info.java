/**
 * The steady sweep: solids, then mercury, from the headwaters down, in two bounds. Read
 * {@link org.silverwake.model.transport.SteadyRun} first. Loads kg/s, concentrations kg/m3 of water, contents kg/kg dry.
 */
package org.silverwake.model.transport;
