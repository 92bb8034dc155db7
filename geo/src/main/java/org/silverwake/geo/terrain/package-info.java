/**
 * Ground heights from a raster. Read {@link org.silverwake.geo.terrain.ElevationModel} first. Places are WGS 84 degrees,
 * longitude first; heights metres.
 */
package org.silverwake.geo.terrain;
