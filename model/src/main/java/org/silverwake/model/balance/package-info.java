/** Terms of the mass budget as rows, and how well they close. Read {@link org.silverwake.model.balance.Balance} first. kg/s. */
package org.silverwake.model.balance;
