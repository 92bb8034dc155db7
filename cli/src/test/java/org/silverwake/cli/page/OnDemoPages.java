// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Tests on the demo's report pages in a browser: opened once for each class, closed after it, nothing amiss after any test. */
abstract class OnDemoPages {
    @TempDir
    static Path folder;

    static DemoPages pages;
    static Browser browser;

    @BeforeAll
    static void openPages() throws IOException {
        browser = Browser.desktop(folder.resolve("desktop"));
        pages = DemoPages.in(folder);
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
            browser = null;
        }
    }

    @AfterEach
    void nothingAmissInTheBrowser() {
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).isEmpty();
    }

    static String text(String css) {
        return browser.find(css).getText();
    }
}
