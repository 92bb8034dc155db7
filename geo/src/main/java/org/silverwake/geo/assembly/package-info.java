/**
 * From a layer's lines to a directed network: snapping, splitting, orienting, and the defects met on the way. Read
 * {@link org.silverwake.geo.assembly.RiverMap} first. Lines are WGS 84 degrees, longitude first; lengths geodesic metres.
 */
package org.silverwake.geo.assembly;
