// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Takes the parts of a network through steps of time, several at once where there are threads. A part goes on to a step when
 * those whose water it takes have done it, and when those that take its own are done with the step before; so a part
 * finds the same whatever the number of threads. An interrupt does not end the work; the thread stays marked as interrupted.
 */
final class PartSteps implements AutoCloseable {
    private final NetworkParts parts;
    private final boolean alone;
    private final ExecutorService threads;

    /** What is done with a part in a step; both are counted from 0. */
    interface Work {
        void run(int part, int step);
    }

    PartSteps(NetworkParts parts, int threads) {
        this.parts = parts;
        int useful = Math.min(threads, parts.count());
        this.alone = useful <= 1;
        this.threads = Executors.newFixedThreadPool(Math.max(1, useful));
    }

    /** Takes all parts through steps; of several failures the one that comes first step by step and part by part is thrown. */
    void run(int steps, Work work) {
        List<CompletableFuture<?>> all = new ArrayList<>();
        for (int step = 0; step < steps; step++) {
            for (int part = 0; part < parts.count(); part++) {
                List<CompletableFuture<?>> before = new ArrayList<>();
                for (int up : parts.feeding(part)) {
                    before.add(all.get(step * parts.count() + up));
                }
                if (step > 0) {
                    int last = (step - 1) * parts.count();
                    before.add(all.get(last + part));
                    for (int down : parts.fed(part)) {
                        before.add(all.get(last + down));
                    }
                }
                all.add(after(before, part, step, work));
            }
        }
        finish(all);
    }

    /** Does something with every part, in any order; of several failures that of the first part is thrown. */
    void each(Work work) {
        List<CompletableFuture<?>> all = new ArrayList<>();
        for (int part = 0; part < parts.count(); part++) {
            all.add(after(List.of(), part, 0, work));
        }
        finish(all);
    }

    private CompletableFuture<Void> after(List<CompletableFuture<?>> before, int part, int step, Work work) {
        if (alone) {
            work.run(part, step);
            return CompletableFuture.completedFuture(null);
        }
        return CompletableFuture.allOf(before.toArray(CompletableFuture[]::new))
                .thenRunAsync(() -> work.run(part, step), threads);
    }

    private static void finish(List<CompletableFuture<?>> all) {
        Throwable first = null;
        for (CompletableFuture<?> each : all) {
            try {
                each.join();
            } catch (CompletionException e) {
                first = first == null ? e.getCause() : first;
            }
        }
        if (first instanceof Error error) {
            throw error;
        }
        if (first != null) {
            throw (RuntimeException) first;
        }
    }

    @Override
    public void close() {
        threads.shutdown();
    }
}
