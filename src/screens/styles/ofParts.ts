/**
 * The styles of every part of the desk, those that come later too: the page's own, which follow, have the last word on
 * a phone and on paper, whenever a part comes.
 */
import.meta.glob(['../**/*.css', '!../crew/**', '!./*.css'], { eager: true });
