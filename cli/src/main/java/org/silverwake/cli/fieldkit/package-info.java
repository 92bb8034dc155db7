/**
 * Paper for the field: sampling sheets, custody form, bottle labels, and the table in which results come back. Read
 * {@link org.silverwake.cli.fieldkit.FieldKit} first, then {@link org.silverwake.cli.fieldkit.SamplePlan}, which counts.
 * Lengths on paper are in mm from the upper left corner of the page, letters in points; coordinates are WGS 84 degrees.
 */
package org.silverwake.cli.fieldkit;
