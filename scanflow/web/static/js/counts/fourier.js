// The discrete Fourier transform of a picture whose sides are powers of two (Cooley and Tukey, 1965).

/** In place: `re` and `im` row by row. The picture is given back. */
export function fft2({ rows, columns, re, im }) {
  for (let y = 0; y < rows; y += 1) fft(re, im, y * columns, 1, columns);
  for (let x = 0; x < columns; x += 1) fft(re, im, x, columns, rows);
  return { rows, columns, re, im };
}

/** One line of it: `size` numbers from `start`, each `step` after the one before. */
function fft(re, im, start, step, size) {
  for (let i = 1, j = 0; i < size; i += 1) {
    let bit = size >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) swap(re, im, start + i * step, start + j * step);
  }
  for (let half = 1; half < size; half *= 2) {
    for (let k = 0; k < half; k += 1) {
      const [cos, sin] = [Math.cos((Math.PI * k) / half), -Math.sin((Math.PI * k) / half)];
      for (let i = k; i < size; i += 2 * half) {
        const [a, b] = [start + i * step, start + (i + half) * step];
        const [x, y] = [re[b] * cos - im[b] * sin, re[b] * sin + im[b] * cos];
        [re[b], im[b]] = [re[a] - x, im[a] - y];
        re[a] += x;
        im[a] += y;
      }
    }
  }
}

function swap(re, im, a, b) {
  [re[a], re[b]] = [re[b], re[a]];
  [im[a], im[b]] = [im[b], im[a]];
}
