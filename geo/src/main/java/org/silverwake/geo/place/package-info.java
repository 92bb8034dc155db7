/** Points on the network, and the cutting of reaches there. Coordinates WGS 84 degrees, longitude first. */
package org.silverwake.geo.place;
