// Yes and no for the ear and the hand: two rising notes against two low knocks, one buzz against three.

let context = null;

function audio() {
  const Context = window.AudioContext ?? window.webkitAudioContext;
  if (!context && Context) context = new Context();
  context?.resume?.();
  return context;
}

function tone(shape, hertz, start, seconds, loud) {
  const sound = audio();
  if (!sound) return;
  const [wave, gain, at] = [sound.createOscillator(), sound.createGain(), sound.currentTime + start];
  wave.type = shape;
  wave.frequency.value = hertz;
  gain.gain.setValueAtTime(loud, at);
  gain.gain.exponentialRampToValueAtTime(0.001, at + seconds);
  wave.connect(gain).connect(sound.destination);
  wave.start(at);
  wave.stop(at + seconds);
}

// Ready at a first key or touch: browsers ask for one, and it takes a while.
for (const each of ["keydown", "pointerdown"]) document.addEventListener(each, audio, { once: true });

export function yes() {
  tone("sine", 660, 0, 0.12, 0.3);
  tone("sine", 990, 0.11, 0.18, 0.3);
  navigator.vibrate?.(60);
}

export function no() {
  tone("square", 110, 0, 0.16, 0.5);
  tone("square", 92, 0.24, 0.24, 0.5);
  navigator.vibrate?.([140, 90, 140, 90, 140]);
}

/** Neither: one plain note, for what waits for an answer. */
export function noted() {
  tone("triangle", 440, 0, 0.15, 0.3);
  navigator.vibrate?.([30, 60, 30]);
}
