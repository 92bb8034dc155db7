/**
 * What a run leaves besides pictures: tables as CSV, the record of the run. Read {@link org.silverwake.cli.report.Tables}
 * first. Units stand in every header; numbers have six significant digits.
 */
package org.silverwake.cli.report;
