/**
 * The main run, step by step: read {@link org.silverwake.cli.run.MainRun} first. Each step turns what the doors gave into what
 * {@code geo} and {@code model} take; nothing is computed here. SI.
 */
package org.silverwake.cli.run;
