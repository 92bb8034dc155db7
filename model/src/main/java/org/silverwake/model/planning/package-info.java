// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * From effects of practices to a decision: the cheapest set of practices that brings chosen values under their limits, what
 * each budget buys, and by how much releases must fall. Read {@link org.silverwake.model.planning.Planner} first.
 *
 * <p>Nothing here knows of rivers. Practices are {@link org.silverwake.model.planning.Option options} with a cost and a
 * benefit, what they do at the limits is answered by an {@link org.silverwake.model.planning.Evaluator}. Costs are in one
 * currency a year and negative where a practice pays for itself, kilograms are kg/a kept out of the river, values and limits
 * share whatever unit the evaluator uses. Shares run from 0 (not adopted) to 1.
 *
 * <p>Effects of two options on one site need not add up (a retort saves less where tailings are contained as well). The
 * linear problem adds them; the full run that follows does not, and the next linear problem starts from its answer. Where the
 * interplay is strong, put the options in one group, of which one may be chosen, and offer the combination as an option of its
 * own in the same group.
 *
 * <p>Linear problems are solved by ojAlgo's simplex, yes-or-no choices by a search of our own on top: it visits options in
 * their order, on one thread and without a clock, so that the same question has the same answer, and it checks each set in
 * plain arithmetic.
 */
package org.silverwake.model.planning;
