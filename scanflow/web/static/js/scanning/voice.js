// Says verdicts and what comes next, where this device is told to.

const PLACE = "voice";
const synthesis = window.speechSynthesis;

export const on = () => Boolean(synthesis) && localStorage.getItem(PLACE) === "on";

/** Says this at once, in place of what is being said. */
export function say(words) {
  if (!on()) return;
  synthesis.cancel();
  add(words);
}

function add(words) {
  const said = new SpeechSynthesisUtterance(words);
  said.lang = document.documentElement.lang;
  synthesis.speak(said);
}

/** Says what this page wants next, after what is being said. */
export function next() {
  const words = document.querySelector("[data-say]")?.dataset.say;
  if (on() && words) add(words);
}

/** Shows the page's switch, which says how it stands, where the browser can speak. */
export function offer() {
  const button = document.querySelector("[data-voice]");
  if (!button || !synthesis) return;
  const show = () => (button.textContent = on() ? "Voice is on" : "Voice is off");
  button.hidden = false;
  show();
  button.addEventListener("click", () => {
    localStorage.setItem(PLACE, on() ? "off" : "on");
    show();
    if (!on()) synthesis.cancel();
    else say("I say what comes next.");
  });
}
