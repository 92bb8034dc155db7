// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** Random networks for tests: trees, braids, one reach, long chains; the same seed gives the same network. */
public final class RandomNetworks {
    /** A losing stretch on which gauges were met only after more than 200 rounds. */
    private static final long GAUGES_MET_SLOWLY = 9769163575312L;

    private static final int FIXED_SEEDS = 20;
    private static final double ARM_CHANCE = 0.25;

    private RandomNetworks() {}

    /** A network as lists, shuffled, before it is sorted; its text is what a failing test shows. */
    public record Draft(long seed, String kind, List<Integer> from, List<Integer> to) {
        /** The network; reach i of the lists is named r i. */
        public RiverNetwork network() {
            List<String> ids = new ArrayList<>();
            for (int i = 0; i < from.size(); i++) {
                ids.add("r" + i);
            }
            return RiverNetwork.of(ids, array(from), array(to));
        }

        @Override
        public String toString() {
            return kind + ", " + from.size() + " reaches, seed " + seed;
        }
    }

    /** 20 fixed seeds and a fresh one, one network of each. */
    public static Stream<Draft> drafts() {
        return seeds().mapToObj(RandomNetworks::draft);
    }

    /** 20 fixed seeds, those that once found something, and a fresh one. */
    public static LongStream seeds() {
        return LongStream.concat(LongStream.range(0, FIXED_SEEDS), LongStream.of(GAUGES_MET_SLOWLY, System.nanoTime()));
    }

    /** A network of the kind and size that a seed decides: up to 120 reaches. */
    public static Draft draft(long seed) {
        Random random = new Random(seed);
        return switch ((int) Math.floorMod(seed, 5L)) {
            case 0 -> braid(seed, 2 + random.nextInt(80));
            case 1 -> tree(seed, 2 + random.nextInt(100));
            case 2 -> braid(seed, 4 + random.nextInt(12));
            case 3 -> chain(seed, 100 + random.nextInt(20));
            default -> seed % 2 == 0 ? chain(seed, 1) : braid(seed, 30);
        };
    }

    /** Several trees that never split. */
    public static Draft tree(long seed, int nodes) {
        return grown(seed, "tree", nodes, 0);
    }

    /** Trees with extra arms, so that reaches part and rejoin. */
    public static Draft braid(long seed, int nodes) {
        return grown(seed, "braid", nodes, ARM_CHANCE);
    }

    /** One reach after the other. */
    public static Draft chain(long seed, int reaches) {
        List<int[]> edges = new ArrayList<>();
        for (int i = 0; i < reaches; i++) {
            edges.add(new int[] {i, i + 1});
        }
        return shuffled(seed, "chain", edges, reaches + 1, new Random(seed));
    }

    private static Draft grown(long seed, String kind, int nodes, double armChance) {
        Random random = new Random(seed ^ 0x5117L);
        List<int[]> edges = new ArrayList<>();
        for (int k = 0; k < nodes - 1; k++) {
            int reach = Math.min(nodes - 1 - k, 1 + random.nextInt(6));
            if (k == nodes - 2 || random.nextDouble() > 2.0 / nodes) {
                edges.add(new int[] {k, k + 1 + random.nextInt(reach)});
            }
            while (random.nextDouble() < armChance) {
                edges.add(new int[] {k, k + 1 + random.nextInt(reach)});
            }
        }
        return shuffled(seed, kind, edges, nodes, random);
    }

    private static Draft shuffled(long seed, String kind, List<int[]> edges, int nodes, Random random) {
        List<Integer> names = new ArrayList<>();
        for (int k = 0; k < nodes; k++) {
            names.add(k);
        }
        Collections.shuffle(names, random);
        Collections.shuffle(edges, random);
        List<Integer> from = new ArrayList<>();
        List<Integer> to = new ArrayList<>();
        for (int[] edge : edges) {
            from.add(names.get(edge[0]));
            to.add(names.get(edge[1]));
        }
        return new Draft(seed, kind, List.copyOf(from), List.copyOf(to));
    }

    private static int[] array(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }
}
