// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.ScenarioException;

/**
 * Where results go: they are written to a folder beside the target and moved into place when complete, so a run that fails
 * leaves the last good output alone. Each output lists its files in {@code contents.txt}; a folder that holds any other file
 * is never replaced.
 */
public final class OutputFolder {
    private static final String CONTENTS = "contents.txt";
    private static final Set<String> LITTER = Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

    private final Path target;
    private final Path work;
    private final List<Path> made;

    private OutputFolder(Path target, Path work, List<Path> made) {
        this.target = target;
        this.work = work;
        this.made = made;
    }

    /**
     * Begins.
     *
     * @throws ScenarioException if the target is a file, or a folder that holds anything else than an earlier output
     */
    public static OutputFolder begin(Path target) {
        Path absolute = target.toAbsolutePath().normalize();
        try {
            refuse(absolute).ifPresent(why -> {
                throw new ScenarioException(List.of("--out " + target + ": " + why));
            });
            List<Path> made = missing(absolute.getParent());
            Files.createDirectories(absolute.getParent());
            Path work = absolute.resolveSibling("." + absolute.getFileName() + "-" + UUID.randomUUID());
            Files.createDirectory(work); // with the usual rights, so that others of the office may read the results
            return new OutputFolder(absolute, work, made);
        } catch (IOException e) {
            throw new ScenarioException(
                    List.of("--out " + target + ": cannot be written (" + reason(e) + "); give another folder"));
        }
    }

    /** Folders from this one up that are not there yet. */
    private static List<Path> missing(Path folder) {
        List<Path> missing = new ArrayList<>();
        for (Path f = folder; f != null && !Files.exists(f); f = f.getParent()) {
            missing.add(f);
        }
        return missing;
    }

    /** What went wrong with a file, in words. */
    public static String reason(IOException e) {
        String kind = e instanceof AccessDeniedException
                ? "no permission for "
                : e instanceof FileAlreadyExistsException ? "there is a file at " : "";
        return kind + e.getMessage();
    }

    /** Why the target must be left alone, if it must. */
    private static Optional<String> refuse(Path target) throws IOException {
        if (target.getFileName() == null) {
            return Optional.of("is no folder of its own; give an empty or a new folder");
        }
        if (!Files.exists(target)) {
            return Optional.empty();
        }
        if (!Files.isDirectory(target)) {
            return Optional.of("is a file; give a folder");
        }
        Path list = target.resolve(CONTENTS);
        Set<String> ours = Files.isRegularFile(list) ? new HashSet<>(Files.readAllLines(list)) : Set.of();
        return contents(target).stream()
                .filter(name -> !ours.contains(name) && !isLitter(name))
                .findFirst()
                .map(name ->
                        "holds " + name + ", which is no file of an earlier output and would be lost; move it, or give"
                                + " an empty or a new folder");
    }

    /** What desktops leave in folders people look into. */
    private static boolean isLitter(String name) {
        return LITTER.contains(name.substring(name.lastIndexOf('/') + 1));
    }

    private static List<String> contents(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> !Files.isDirectory(f))
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    /** The folder to write into. */
    public Path path() {
        return work;
    }

    /** Moves everything into place, in the stead of an earlier output. */
    public void complete() {
        try {
            List<String> names = new ArrayList<>(contents(work));
            names.add(CONTENTS);
            Files.write(work.resolve(CONTENTS), names);
            if (Files.exists(target)) {
                Path old = target.resolveSibling(work.getFileName() + "-old");
                Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
                moveOrRestore(old);
                delete(old);
            } else {
                Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void moveOrRestore(Path old) throws IOException {
        try {
            Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
            throw e;
        }
    }

    /** Throws away what was written, if it is still there. */
    public void discard() {
        if (Files.exists(work)) {
            try {
                delete(work);
                for (Path folder : made) {
                    Files.delete(folder);
                }
            } catch (DirectoryNotEmptyException e) {
                return; // somebody else uses it by now
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
