/** Words and numbers as people read them. Read {@link org.silverwake.cli.text.Numbers} first. */
package org.silverwake.cli.text;
