/**
 * Particles: classes, settling, deposition, background sediment. Read {@link org.silverwake.model.solids.ParticleClass} first.
 * SI; settling velocity positive downward.
 */
package org.silverwake.model.solids;
