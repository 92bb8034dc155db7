// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;
import java.util.stream.Stream;

/**
 * The same way down the river in several scenarios: the high estimate of each.
 *
 * @param frame the first scenario's profile, which gives axes, marks, gaps and guideline values; its band is not drawn
 * @param courses one per scenario, from one to {@value #MOST}
 */
public record ScenarioProfile(Profile frame, List<Course> courses) {
    /** More lines than this cannot be told apart. */
    public static final int MOST = 4;

    /**
     * One scenario.
     *
     * @param name its name
     * @param stretches its values, of which the high one is drawn
     */
    public record Course(String name, List<Profile.Stretch> stretches) {
        /** Copies the list. */
        public Course {
            stretches = List.copyOf(stretches);
        }
    }

    /** Copies and checks. */
    public ScenarioProfile {
        courses = List.copyOf(courses);
        if (courses.isEmpty() || courses.size() > MOST) {
            throw new IllegalArgumentException(courses.size() + " scenarios on one chart; give 1 to " + MOST);
        }
    }

    Decades decades() {
        double[] values = courses.stream()
                .flatMap(course -> course.stretches().stream())
                .flatMap(stretch -> stretch.points().stream())
                .mapToDouble(Profile.Point::high)
                .toArray();
        double[] guidelines = Stream.of(frame)
                .flatMap(f -> f.guidelines().stream())
                .mapToDouble(Profile.GuidelineValue::value)
                .toArray();
        return Decades.of(values, guidelines);
    }
}
