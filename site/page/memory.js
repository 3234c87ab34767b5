// What the browser remembers is a convenience only: it may be forbidden, shared with other pages or written by
// another version, so everything read here is checked by whoever uses it.

const MEMORY_PREFIX = "steadfoot.1.";

function remember(where, key, text) {
  try {
    if (text === null) globalThis[where].removeItem(MEMORY_PREFIX + key);
    else globalThis[where].setItem(MEMORY_PREFIX + key, text);
  } catch {
    // Nothing depends on it.
  }
}

function recalled(where, key) {
  try {
    return globalThis[where].getItem(MEMORY_PREFIX + key);
  } catch {
    return null;
  }
}
