/**
 * The façade of the computation: one call a step. {@link org.silverwake.model.Water} routes water and shapes the channel;
 * {@code transport.SteadyRun} carries solids and mercury; {@code screening} gives the answers. Knows nothing of files, maps or
 * coordinates. SI throughout.
 */
package org.silverwake.model;
