/** One thin class per command: parse, call, print. Read {@link org.silverwake.cli.command.Silverwake} first. */
package org.silverwake.cli.command;
