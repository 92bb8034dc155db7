/**
 * River networks without coordinates: order, cycles, components, bifurcations. Read
 * {@link org.silverwake.model.network.RiverNetwork} first. Reaches are dense indices in downstream order.
 */
package org.silverwake.model.network;
