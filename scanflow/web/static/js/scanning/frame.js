// No answer is neither yes nor no: the page stays, inside a grey frame with a clock.

const CLOCK =
  '<svg viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.5">' +
  '<circle cx="12" cy="12" r="10"/><path d="M12 6v6l4 3"/></svg>';

let frame = null;

/** Shows the frame with a sentence, or takes it away for an empty one. */
export function wait(sentence) {
  if (!sentence) {
    frame?.remove();
    frame = null;
    document.body.style.paddingTop = "";
    return;
  }
  if (!frame) {
    frame = document.createElement("div");
    frame.className = "frame";
    frame.setAttribute("role", "status");
    frame.innerHTML = `<p>${CLOCK}<span></span></p>`;
    document.body.append(frame);
  }
  const words = frame.querySelector("span");
  if (words.textContent === sentence) return;
  words.textContent = sentence;
  document.body.style.paddingTop = `${frame.firstElementChild.getBoundingClientRect().bottom}px`; // it covers nothing
}
