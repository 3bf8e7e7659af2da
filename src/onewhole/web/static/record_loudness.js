// How loud a stretch of sound is: a number for the bar and a word beside it.

const HEARD = -45; // decibels below the loudest possible; what is less is no voice
const CLIPPED = 0.97; // of the largest sample
const SILENT = 1500; // milliseconds without a voice until it is told

/**
 * The loudness of samples from -1 to 1, in decibels below the loudest possible, and the largest of them.
 * @param {Float32Array} samples
 */
export function measured(samples) {
  let sum = 0;
  let peak = 0;
  for (const sample of samples) {
    sum += sample * sample;
    peak = Math.max(peak, Math.abs(sample));
  }
  return { decibels: 10 * Math.log10(sum / samples.length + 1e-10), peak };
}

/** Where the bar stands for a loudness, from 0 to 100. @param {number} decibels */
export const barOf = (decibels) => Math.max(0, Math.min(100, Math.round((decibels + 60) * 1.9)));

/** Whether a loudness is a voice. @param {number} decibels */
export const isHeard = (decibels) => decibels > HEARD;

/**
 * The word for it.
 * @param {number} peak
 * @param {number} quiet milliseconds since a voice was heard
 */
export function wordOf(peak, quiet) {
  if (peak > CLIPPED) return "Too loud: move away a little";
  return quiet > SILENT ? "Silent: nothing is heard" : "Good";
}
