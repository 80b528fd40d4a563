// One frame of a live camera to texts: by the browser's own decoder, or else by the service.

import { post } from "../page/api.js";

const BAND = 0.4; // of the picture's height is looked at, in its middle: `style.css` marks it
const LONGEST = 1000; // pixels across of what is sent
const QUALITY = 0.7;
const FORMATS = ["code_128", "code_39", "itf"];
const DEAD = 5000; // ms

/** A function from a playing video to the texts in its middle; it rejects where there is no answer. */
export async function makeDecoder() {
  const known = (await window.BarcodeDetector?.getSupportedFormats().catch(() => [])) ?? [];
  const canvas = document.createElement("canvas");
  if (!known.includes(FORMATS[0])) return (video) => byService(draw(canvas, video));
  const detector = new window.BarcodeDetector({ formats: FORMATS.filter((each) => known.includes(each)) });
  return async (video) => (await detector.detect(draw(canvas, video))).map((code) => code.rawValue);
}

/** The middle of the picture on the canvas, no larger than it need be. */
function draw(canvas, video) {
  const [width, height] = [video.videoWidth, video.videoHeight];
  const scale = Math.min(1, LONGEST / width);
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * BAND * scale);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  context.drawImage(video, 0, (height * (1 - BAND)) / 2, width, height * BAND, 0, 0, canvas.width, canvas.height);
  return canvas;
}

async function byService(canvas) {
  const jpeg = await new Promise((go) => grey(canvas).toBlob(go, "image/jpeg", QUALITY));
  const form = new FormData();
  form.append("image", jpeg, "frame.jpg");
  const { status, json } = await post("/api/decode", form, AbortSignal.timeout(DEAD));
  if (status !== 200) throw new Error(json?.detail ?? `status ${status}`);
  return json.texts;
}

/** In place; not every browser's canvas has a filter for it. */
function grey(canvas) {
  const context = canvas.getContext("2d");
  const pixels = context.getImageData(0, 0, canvas.width, canvas.height);
  const { data } = pixels;
  for (let i = 0; i < data.length; i += 4) {
    data[i] = data[i + 1] = data[i + 2] = 0.299 * data[i] + 0.587 * data[i + 1] + 0.114 * data[i + 2];
  }
  context.putImageData(pixels, 0, 0);
  return canvas;
}
