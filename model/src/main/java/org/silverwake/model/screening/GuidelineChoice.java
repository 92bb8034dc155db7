// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which guidelines are compared at which reaches. A reach that lies in classes has the values of all its classes, one in
 * none has the general list. Drinking-water values of the general list hold at every place where people drink, whatever
 * the class of its reach: a class may add to them, not take them away. Immutable.
 */
public final class GuidelineChoice {
    private final boolean isEverywhere;
    private final Set<String> general;
    private final List<ReachGroup> groups;
    private final List<BitSet> members = new ArrayList<>();
    private final BitSet grouped = new BitSet();
    private final Map<String, BitSet> byGuideline = new HashMap<>();

    private GuidelineChoice(boolean isEverywhere, List<String> general, List<ReachGroup> groups) {
        this.isEverywhere = isEverywhere;
        this.general = Set.copyOf(general);
        this.groups = List.copyOf(groups);
        for (ReachGroup group : groups) {
            BitSet reaches = new BitSet();
            group.reaches().forEach(reaches::set);
            members.add(reaches);
            grouped.or(reaches);
            group.guidelines()
                    .forEach(id ->
                            byGuideline.computeIfAbsent(id, key -> new BitSet()).or(reaches));
        }
    }

    /**
     * Reaches of one class or use.
     *
     * @param name its name
     * @param guidelines ids of the values compared there
     * @param reaches indices of its reaches
     */
    public record ReachGroup(String name, List<String> guidelines, List<Integer> reaches) {
        /** Copies the lists. */
        public ReachGroup {
            guidelines = List.copyOf(guidelines);
            reaches = List.copyOf(reaches);
        }
    }

    /** Every guideline at every reach. */
    public static GuidelineChoice everywhere() {
        return new GuidelineChoice(true, List.of(), List.of());
    }

    /**
     * By class.
     *
     * @param general ids of the values compared where a reach lies in no class
     * @param groups the classes; a reach may lie in several
     */
    public static GuidelineChoice of(List<String> general, List<ReachGroup> groups) {
        return new GuidelineChoice(false, general, groups);
    }

    /** Whether a guideline is chosen at a reach. */
    public boolean isChosen(Guideline guideline, int reach) {
        if (isEverywhere) {
            return true;
        }
        boolean always = guideline.scope() == Medium.Scope.DRINKING_PLACE || !grouped.get(reach);
        return always && general.contains(guideline.id())
                || byGuideline.containsKey(guideline.id())
                        && byGuideline.get(guideline.id()).get(reach);
    }

    /** Names of the classes a reach lies in. */
    public List<String> groups(int reach) {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < groups.size(); k++) {
            if (members.get(k).get(reach)) {
                names.add(groups.get(k).name());
            }
        }
        return names;
    }
}
