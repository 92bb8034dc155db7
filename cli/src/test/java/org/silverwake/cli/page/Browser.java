// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.remote.RemoteWebDriver;

/** A real browser without a network, for tests of pages. */
final class Browser implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    /** What a page may ask for; chrome: is the browser's own page before ours. */
    private static final List<String> LOCAL = List.of("file:", "data:", "blob:", "about:", "chrome:");

    private static final Duration PAUSE = Duration.ofMillis(50);

    private final ChromeDriverService service;
    private final RemoteWebDriver driver;
    private final Path downloads;

    private Browser(ChromeDriverService service, RemoteWebDriver driver, Path downloads) {
        this.service = service;
        this.driver = driver;
        this.downloads = downloads;
    }

    /** Starts one with a window of 1280 by 800, or skips the test where chromium or its driver is absent. */
    static Browser desktop(Path folder) {
        ChromeOptions options = new ChromeOptions();
        options.addArguments("--window-size=1280,800");
        return start(folder, options);
    }

    /** The same as wide as a phone. */
    static Browser phone(Path folder) {
        ChromeOptions options = new ChromeOptions();
        options.setExperimentalOption(
                "mobileEmulation", Map.of("deviceMetrics", Map.of("width", 390, "height", 844, "pixelRatio", 2.0)));
        return start(folder, options);
    }

    private static Browser start(Path folder, ChromeOptions options) {
        Optional<Path> chromium = onPath("chromium");
        Optional<Path> chromedriver = onPath("chromedriver");
        assumeTrue(chromium.isPresent() && chromedriver.isPresent(), "chromium and chromedriver are not on the PATH");
        Path downloads = folder.resolve("downloads").toAbsolutePath();
        options.setBinary(chromium.get().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--user-data-dir=" + folder.resolve("profile").toAbsolutePath());
        options.setExperimentalOption(
                "prefs",
                Map.of("download.default_directory", downloads.toString(), "download.prompt_for_download", false));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.get().toFile())
                .build();
        try {
            service.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        RemoteWebDriver driver = new RemoteWebDriver(service.getUrl(), options);
        return new Browser(service, driver, downloads);
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    RemoteWebDriver driver() {
        return driver;
    }

    /** Opens a page from its file and waits until it says that it is ready. */
    void open(Path page) {
        driver.get("about:blank"); // so that nothing of an earlier page is taken for this one's
        driver.get(page.toAbsolutePath().toUri().toString());
        waitFor("return !!(window.silverwake && window.silverwake.ready && window.silverwake.firstDrawing)");
    }

    void waitFor(String script) {
        await(script, () -> Boolean.TRUE.equals(driver.executeScript(script)));
    }

    private static void await(String what, BooleanSupplier claim) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!claim.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain for " + what);
            }
            LockSupport.parkNanos(PAUSE.toNanos());
        }
    }

    Object ask(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    double number(String script, Object... arguments) {
        return ((Number) ask(script, arguments)).doubleValue();
    }

    WebElement find(String css) {
        await(css, () -> !driver.findElements(By.cssSelector(css)).isEmpty());
        return driver.findElement(By.cssSelector(css));
    }

    /** Presses the first button whose words begin so, inside an element. */
    void press(String within, String words) {
        List<WebElement> buttons = find(within).findElements(By.tagName("button"));
        WebElement button = buttons.stream()
                .filter(b -> b.getText().startsWith(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button \"" + words + "\" in " + within + ", but "
                        + buttons.stream().map(WebElement::getText).toList()));
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
    }

    /** The text of a downloaded file, once it is complete. */
    String downloaded(String name) {
        Path file = downloads.resolve(name);
        await(name, () -> file.toFile().length() > 0);
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            Files.delete(file); // the next one would be given another name
            return text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the page complained of. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Addresses that were asked for, besides files and what lies in the page itself. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .filter(url -> LOCAL.stream().noneMatch(url::startsWith))
                .toList();
    }

    void picture(Path png) {
        try {
            Files.createDirectories(png.toAbsolutePath().getParent());
            Files.write(png, driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        service.stop();
    }
}
