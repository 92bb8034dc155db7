// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Records with one of their values replaced, so that one run can be drawn in many ways. */
public final class Changed {
    private Changed() {}

    /** A record with another value at a place such as {@code scenario.project.language}. */
    public static <T> T at(T record, String place, Object value) {
        String[] names = place.split("\\.", 2);
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            boolean hit = false;
            for (int k = 0; k < components.length; k++) {
                Object old = components[k].getAccessor().invoke(record);
                boolean here = components[k].getName().equals(names[0]);
                hit |= here;
                values[k] = !here ? old : names.length == 1 ? value : at(old, names[1], value);
            }
            if (!hit) {
                throw new IllegalArgumentException(record.getClass() + " has no " + names[0]);
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            T changed = (T) record.getClass().getDeclaredConstructor(types).newInstance(values);
            return changed;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(place, e);
        }
    }
}
