// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

// Marks of points, the same as on printed maps.

const SHAPES = { // drawn on 24 x 24
    site: '<path d="M12 3 22 21H2Z" class="ink"/>',
    village: '<path d="M12 3 21 11V21H3V11Z" class="paper"/>',
    intake: '<path d="M12 2C16 8 19 11 19 15.5a7 7 0 0 1-14 0C5 11 8 8 12 2Z" class="water"/>',
    fishing: '<path d="M2 12C6 6 13 6 17 11L22 7V17L17 13C13 18 6 18 2 12Z" class="water"/>',
    gauge: '<path d="M9 2H15V22H9Z" class="ink"/><path d="M9 7h3M9 12h3M9 17h3" class="line"/>',
    abstraction: '<path d="M3 3H21V21H3Z" class="paper"/><path d="M12 7V17M7.500 12.500 12 17 16.500 12.500" class="stroke"/>',
    sample: '<path d="M9 2H15V8L19 14V22H5V14L9 8Z" class="paper"/>',
    place: '<circle cx="12" cy="12" r="8" class="paper"/>'
};

function symbolOf(mark) {
    const holder = make("span", "symbol");
    holder.innerHTML = '<svg viewBox="0 0 24 24" aria-hidden="true">' + (SHAPES[mark] || SHAPES.place) + "</svg>";
    return holder;
}
