// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EditDistanceTest {
    /** kitten to sitting is the usual textbook example (from memory): two replaced, one inserted. */
    @Test
    void lettersInsertedRemovedOrReplaced() {
        assertThat(EditDistance.between("kitten", "sitting")).isEqualTo(3);
        assertThat(EditDistance.between("", "abc")).isEqualTo(3);
        assertThat(EditDistance.between("abc", "")).isEqualTo(3);
        assertThat(EditDistance.between("reach", "reach")).isZero();
        assertThat(EditDistance.between("contnt", "content")).isEqualTo(1);
    }
}
