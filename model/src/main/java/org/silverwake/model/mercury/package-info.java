/**
 * Mercury: which states are carried, how exchangeable mercury partitions. Read
 * {@link org.silverwake.model.mercury.StateLayout} first. All mercury in kg of Hg, whatever the form.
 */
package org.silverwake.model.mercury;
