// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Numbers of the model's public methods say their unit. The rule, as in DEVELOPERS.md: where a public method or record of a
 * public type takes or returns a double (or an array of them), each of its tags, or else the text of its comment, holds a unit
 * in brackets; {@code [-]} where there is none. Whole numbers are indices and counts, and exempt. A method that overrides takes
 * its comment from above.
 */
class JavadocUnitsTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final Pattern UNIT = Pattern.compile("\\[[^\\]\\s][^\\]]{0,40}\\]");
    private static final Set<String> NUMBERS = Set.of("double", "double[]", "double...", "OptionalDouble");

    @Test
    void publicNumbersSayTheirUnit() throws IOException {
        assertThat(problems(sources())).isEmpty();
    }

    /** The rule itself works: a sample with and without units. */
    @Test
    void ruleFindsWhatIsMissing(@org.junit.jupiter.api.io.TempDir Path folder) throws IOException {
        Path file = folder.resolve("Sample.java");
        Files.writeString(file, """
                /** A sample. */
                public final class Sample {
                    /** Speed [m/s]. */
                    public double speed() { return 1; }
                    /**
                     * Depth.
                     * @param width of the river
                     * @return depth [m]
                     */
                    public double depth(double width) { return width; }
                    public double bare() { return 1; }
                    /** Reaches. */
                    public int count(int reach) { return reach; }
                    double hidden() { return 1; }
                    /**
                     * Pair.
                     * @param a first [kg]
                     * @param b second
                     */
                    public record Pair(double a, double b) {}
                }
                """);
        assertThat(problems(List.of(file)))
                .containsExactly(
                        "Sample.java:10 depth: double width has no unit in brackets",
                        "Sample.java:11 bare: what it returns has no unit in brackets",
                        "Sample.java:20 Pair: double b has no unit in brackets");
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
    }

    private static List<String> problems(List<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> problems = new ArrayList<>();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, java.util.Locale.ROOT, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            Trees trees = Trees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Scan(unit, trees, problems).scan(unit, null);
            }
        }
        return problems;
    }

    private static final class Scan extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final Trees trees;
        private final List<String> problems;

        Scan(CompilationUnitTree unit, Trees trees, List<String> problems) {
            this.unit = unit;
            this.trees = trees;
            this.problems = problems;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            if (type.getKind() == Tree.Kind.RECORD && isPublic(getCurrentPath())) {
                Comment comment = comment();
                for (Tree member : type.getMembers()) {
                    if (member instanceof VariableTree part
                            && !part.getModifiers().getFlags().contains(Modifier.STATIC)) {
                        checkNumber(type, type.getSimpleName().toString(), part, comment);
                    }
                }
            }
            return super.visitClass(type, nothing);
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            if (!isPublic(getCurrentPath()) || overrides(method) || isCompact(method)) {
                return super.visitMethod(method, nothing);
            }
            Comment comment = comment();
            String name = method.getName().toString();
            for (VariableTree parameter : method.getParameters()) {
                checkNumber(method, name, parameter, comment);
            }
            if (method.getReturnType() != null
                    && NUMBERS.contains(method.getReturnType().toString())
                    && !comment.saysUnit(comment.returned())) {
                add(method, name, "what it returns");
            }
            return super.visitMethod(method, nothing);
        }

        private void checkNumber(Tree at, String name, VariableTree variable, Comment comment) {
            String type = variable.getType().toString();
            if (NUMBERS.contains(type)
                    && !comment.saysUnit(comment.parameter(variable.getName().toString()))) {
                add(at, name, type + " " + variable.getName());
            }
        }

        private void add(Tree at, String name, String what) {
            long start = trees.getSourcePositions().getStartPosition(unit, at);
            String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
            problems.add(file + ":" + unit.getLineMap().getLineNumber(start) + " " + name + ": " + what
                    + " has no unit in brackets");
        }

        private Comment comment() {
            return new Comment(
                    Optional.ofNullable(trees.getDocComment(getCurrentPath())).orElse(""));
        }

        private static boolean overrides(MethodTree method) {
            return method.getModifiers().getAnnotations().stream()
                    .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
        }

        /** A record's compact constructor has no parameters of its own; its record is checked instead. */
        private boolean isCompact(MethodTree method) {
            return method.getReturnType() == null
                    && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
                    && type.getKind() == Tree.Kind.RECORD;
        }

        /** Public itself, or in an interface, and so are all types around it. */
        private static boolean isPublic(TreePath path) {
            Tree leaf = path.getLeaf();
            TreePath above = path.getParentPath();
            if (leaf instanceof CompilationUnitTree) {
                return true;
            }
            boolean open = leaf instanceof ClassTree type
                    ? type.getModifiers().getFlags().contains(Modifier.PUBLIC) || inInterface(above)
                    : leaf instanceof MethodTree method
                            && (method.getModifiers().getFlags().contains(Modifier.PUBLIC)
                                    || inInterface(above)
                                            && !method.getModifiers().getFlags().contains(Modifier.PRIVATE));
            return open && isPublic(above);
        }

        private static boolean inInterface(TreePath above) {
            return above.getLeaf() instanceof ClassTree type && type.getKind() == Tree.Kind.INTERFACE;
        }
    }

    /** A documentation comment, and the units in it. */
    private record Comment(String text) {
        Optional<String> parameter(String name) {
            return tag("@param\\s+" + Pattern.quote(name) + "\\s");
        }

        Optional<String> returned() {
            return tag("@return\\s");
        }

        private Optional<String> tag(String start) {
            Matcher matcher =
                    Pattern.compile(start + "((?s).*?)(?=\\n\\s*@\\w|\\z)").matcher(text);
            return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
        }

        /** In the tag where there is one, else in the text before all tags. */
        boolean saysUnit(Optional<String> tag) {
            String before = text.split("\\n\\s*@(param|return|throws|see)\\b", 2)[0];
            return UNIT.matcher(tag.orElse(before)).find();
        }
    }
}
