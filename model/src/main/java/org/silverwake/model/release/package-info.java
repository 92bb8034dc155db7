/** What sites release, by form and flow state. Read {@link org.silverwake.model.release.SiteRelease} first. SI. */
package org.silverwake.model.release;
