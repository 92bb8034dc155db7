/**
 * Water: drainage area, discharge in each flow state, channel shape, shear, mixing. Read
 * {@link org.silverwake.model.water.StateHydraulics} first. SI throughout; reaches in downstream order.
 */
package org.silverwake.model.water;
