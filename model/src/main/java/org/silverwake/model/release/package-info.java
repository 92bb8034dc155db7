/**
 * What sites release, by path, form and flow state: as stated, or from field notes. Read
 * {@link org.silverwake.model.release.SiteRelease} first, what transport takes; then
 * {@link org.silverwake.model.release.FieldNotes}, {@link org.silverwake.model.release.SiteBalance} (the balance of a year) and
 * {@link org.silverwake.model.release.Practice} (a change). SI: masses per cycle in kg, rates in kg/s as the mean of a year of
 * 365.25 d; shares from 0 to 1.
 *
 * <p>From drum to gold the notes are a linear flow sheet, {@link org.silverwake.model.release.Reconciliation}: what they determine is
 * solved, what they say twice is reconciled, and only what is left open is filled from published values, each told as
 * {@link org.silverwake.model.release.Assumed}. Practices move mercury from path to path, so that what closed still closes.
 */
package org.silverwake.model.release;
