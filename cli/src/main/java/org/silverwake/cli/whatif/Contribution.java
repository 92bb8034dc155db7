// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.MercuryPart;
import org.silverwake.model.transport.SteadyResult;

/**
 * What a part of the mercury does besides its values: where it goes, and which reaches have a mark because of it.
 *
 * @param flows budget, mean of the year, by bound and variant [kg/s]
 * @param nearBank reaches within the full-mixing length of its bank outfalls, by flow state
 * @param withinOneWidth reaches nearer to its bank outfalls than one width
 */
public record Contribution(List<Map<Process, Double>> flows, List<BitSet> nearBank, BitSet withinOneWidth) {
    static Contribution of(MercuryPart part, SteadyResult result) {
        List<Map<Process, Double>> flows = new ArrayList<>();
        for (Bound bound : result.bounds()) {
            for (int v = 0; v < result.variants(); v++) {
                flows.add(part.yearly(bound, v));
            }
        }
        int reaches = result.input().hydraulics().reaches().size();
        List<BitSet> nearBank = new ArrayList<>();
        for (int s = 0; s < result.input().stateCount(); s++) {
            BitSet here = new BitSet();
            for (int r = 0; r < reaches; r++) {
                here.set(r, part.isNearBank(s, r));
            }
            nearBank.add(here);
        }
        BitSet within = new BitSet();
        for (int r = 0; r < reaches; r++) {
            within.set(r, part.isWithinOneWidth(r));
        }
        return new Contribution(flows, nearBank, within);
    }
}
