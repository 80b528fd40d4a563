// A scanner that types: keys pressed anywhere on the page go to one box.

const FAST = 60; // ms between the keys of a scanner, at most
const SHORTEST = 4; // characters of the shortest text that a scanner sends without an Enter
const IDLE = 200; // ms of silence after which such a text is complete

const TYPING = 'input:not([type="checkbox"]):not([type="radio"]):not([type="file"]), textarea, select, [contenteditable]';

/** Whether keys belong to the element that has the focus. */
function typesElsewhere(box) {
  const active = document.activeElement;
  return !box || (active !== box && active?.matches(TYPING));
}

/**
 * Sends keys to the element that `find()` gives, if any, and calls `done()` when a text is complete by Enter, Tab or a scanner's silence.
 * `shut()` says that nothing may be taken now; it is asked at each key and told of a whole burst by `refused()`.
 * Returns `{burst()}`: whether the text in the box came from a scanner.
 */
export function listen(find, done, { shut = () => false, refused = () => {} } = {}) {
  let times = [];
  let idle = 0;

  const burst = () => times.length >= SHORTEST && times.every((at, i) => i === 0 || at - times[i - 1] <= FAST);

  function finish(event) {
    event.preventDefault();
    clearTimeout(idle);
    if (shut()) refused();
    else done();
    times = [];
  }

  document.addEventListener(
    "keydown",
    (event) => {
      const box = find();
      if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing || typesElsewhere(box)) return;
      clearTimeout(idle);
      const now = event.timeStamp;
      const running = times.length > 0 && now - times.at(-1) <= IDLE;
      if (event.key.length === 1) {
        if (event.key === " " && document.activeElement !== box && !running) return; // Space presses a button
        times = document.activeElement === box || running ? [...times, now] : [now];
        if (shut()) return event.preventDefault();
        if (document.activeElement !== box) {
          event.preventDefault();
          box.focus();
          box.value += event.key;
        }
        idle = setTimeout(() => burst() && !shut() && (done(), (times = [])), IDLE);
      } else if (event.key === "Enter" && (running || document.activeElement === box)) {
        finish(event);
      } else if (event.key === "Tab" && running && burst()) {
        finish(event);
      } else if (event.key === "Backspace") {
        times = [];
      }
    },
    true,
  );
  return { burst };
}
