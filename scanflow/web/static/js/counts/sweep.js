// Which frames of a live camera that goes along shelves are worth reading: sharp ones with something new in them. The
// same with the same figures as `vision/camera/sweep.py`, which says why, has it for films.

import { fft2 } from "./fourier.js";

export const FINE = 640; // px across of the copy that is looked at; sharpness is told by it
const BLOCK = 5; // px of it, each way, are one of the copy that movement is told by
const GONE = 0.3; // of the view's width or height
const FAR = 4; // px of the small copy: from there on the view is held against a newer one
const SURE = 0.08; // of the correlation's peak; below, the view is another
const [DARK_MEAN, DARK_SPREAD] = [40, 24]; // grey levels, as in `vision/camera/capture.py`
const SOME = 61; // every so many pixels

/** Knows no camera: it is shown the grey levels of one copy after another, all of a size. */
export class Sweep {
  before = null;
  gone = [0, 0];
  sharp = -1;

  /** Whether a stretch has ended before this view, and whether this is the sharpest of its stretch so far. */
  see(levels, wide, high) {
    const size = [Math.floor(high / BLOCK), Math.floor(wide / BLOCK)];
    const now = spectrum(levels, wide, size);
    const ended = this.before !== null && this.ends(now, size);
    if (!this.before || ended) Object.assign(this, { before: now, gone: [0, 0], sharp: -1 });
    const sharp = sharpness(levels, wide, high);
    const best = sharp > this.sharp;
    this.sharp = Math.max(sharp, this.sharp);
    return { ended, best };
  }

  ends(now, size) {
    const { moved, sure } = movement(this.before, now);
    const gone = this.gone.map((each, axis) => each + moved[axis] / size[axis]);
    if (furthest(moved) >= FAR) Object.assign(this, { before: now, gone });
    return sure < SURE || furthest(gone) > GONE;
  }
}

const furthest = (each) => Math.max(...each.map(Math.abs));
const fade = (n, side) => 0.5 - 0.5 * Math.cos((2 * Math.PI * n) / (side - 1));
const powerOfTwo = (side) => 2 ** Math.ceil(Math.log2(side));

/** Of the small copy, which fades towards its edges; in a frame whose sides are powers of two. */
function spectrum(levels, wide, [high, across]) {
  const small = new Float64Array(high * across);
  for (let y = 0; y < high * BLOCK; y += 1) {
    const row = Math.floor(y / BLOCK) * across;
    for (let x = 0; x < across * BLOCK; x += 1) small[row + Math.floor(x / BLOCK)] += levels[y * wide + x];
  }
  const mean = small.reduce((sum, each) => sum + each, 0) / small.length;
  const [rows, columns] = [powerOfTwo(high), powerOfTwo(across)];
  const framed = { rows, columns, re: new Float64Array(rows * columns), im: new Float64Array(rows * columns) };
  for (let y = 0; y < high; y += 1) {
    for (let x = 0; x < across; x += 1) {
      framed.re[y * columns + x] = (small[y * across + x] - mean) * fade(y, high) * fade(x, across);
    }
  }
  return fft2(framed);
}

/** How far the view has gone, down and across in pixels of the small copy, and how sure that is, from 0 to 1. */
function movement(before, now) {
  const { rows, columns } = now;
  const all = rows * columns;
  const cross = { rows, columns, re: new Float64Array(all), im: new Float64Array(all) };
  for (let i = 0; i < all; i += 1) {
    const re = before.re[i] * now.re[i] + before.im[i] * now.im[i];
    const im = before.im[i] * now.re[i] - before.re[i] * now.im[i];
    const length = Math.max(Math.hypot(re, im), 1e-9) * all;
    cross.re[i] = re / length;
    cross.im[i] = -im / length; // there and back: the transform of what is mirrored
  }
  const { re: peaks } = fft2(cross);
  let top = 0;
  for (let i = 1; i < all; i += 1) if (peaks[i] > peaks[top]) top = i;
  return { moved: [signed(Math.floor(top / columns), rows), signed(top % columns, columns)], sure: peaks[top] };
}

const signed = (at, side) => (at < side / 2 ? at : at - side);

/** The variance of the Laplacian, but for the outermost pixels. */
function sharpness(levels, wide, high) {
  let [sum, squares] = [0, 0];
  for (let y = 1; y < high - 1; y += 1) {
    for (let i = y * wide + 1; i < (y + 1) * wide - 1; i += 1) {
      const edge = levels[i - 1] + levels[i + 1] + levels[i - wide] + levels[i + wide] - 4 * levels[i];
      sum += edge;
      squares += edge * edge;
    }
  }
  const number = (wide - 2) * (high - 2);
  return squares / number - (sum / number) ** 2;
}

/** Whether there is no light to see anything by: mean level and contrast, between 1 % and 99 % of some pixels. */
export function isDark(levels) {
  const sorted = levels.filter((_, i) => i % SOME === 0).sort();
  const spread = sorted[Math.floor(0.99 * sorted.length)] - sorted[Math.floor(0.01 * sorted.length)];
  return sorted.reduce((sum, each) => sum + each, 0) / sorted.length < DARK_MEAN && spread < DARK_SPREAD;
}
