// The microphone: opened once, its loudness told all the while, and recorded from.

import { get } from "./kit.js";
import { barOf, isHeard, measured, wordOf } from "./record_loudness.js";

const KINDS = ["audio/webm;codecs=opus", "audio/mp4"];
const FALL = 6; // the bar falls slowly, so that it can be read
const BITS = 64_000; // a second
const AGAIN = 100; // milliseconds

const kindOf = () => KINDS.find((one) => MediaRecorder.isTypeSupported(one));

/** Whether this browser can record on this page. */
export const canRecord = () => Boolean(navigator.mediaDevices?.getUserMedia) && "MediaRecorder" in window && kindOf() !== undefined;

/** Raised where no microphone is given; its message is for the teacher. */
export class NoMicrophone extends Error {}

export class Microphone {
  constructor() {
    /** @type {{ stream: MediaStream, context: AudioContext, analyser: AnalyserNode, samples: Float32Array<ArrayBuffer> } | null} */
    this.open = null;
    this.heard = 0; // when a voice was heard last
  }

  /**
   * Open it, where it is not open yet. Raises NoMicrophone.
   * @returns {Promise<MediaStream>}
   */
  async opened() {
    if (this.open?.stream.active) return this.open.stream;
    this.close();
    let stream;
    try {
      stream = await navigator.mediaDevices.getUserMedia({
        audio: { echoCancellation: false, noiseSuppression: true, autoGainControl: true, channelCount: 1 },
      });
    } catch (error) {
      const isNone = error instanceof DOMException && error.name === "NotFoundError";
      throw new NoMicrophone(isNone ? "No microphone was found." : "The microphone was not given to this page.");
    }
    const context = new AudioContext();
    const analyser = context.createAnalyser();
    analyser.fftSize = 2048;
    context.createMediaStreamSource(stream).connect(analyser);
    this.open = { stream, context, analyser, samples: new Float32Array(analyser.fftSize) };
    this.heard = performance.now();
    this.level();
    return stream;
  }

  /** Tell how loud it is, by a bar and by a word, until it is closed. */
  level() {
    if (!this.open) return;
    const { analyser, samples } = this.open;
    analyser.getFloatTimeDomainData(samples);
    const { decibels, peak } = measured(samples);
    const now = performance.now();
    if (isHeard(decibels)) this.heard = now;
    const meter = get("meter", HTMLMeterElement);
    meter.value = Math.max(barOf(decibels), meter.value - FALL);
    const word = wordOf(peak, now - this.heard);
    if (get("loudness").textContent !== word) get("loudness").textContent = word;
    setTimeout(() => this.level(), AGAIN);
  }

  close() {
    if (!this.open) return;
    this.open.stream.getTracks().forEach((track) => track.stop());
    this.open.context.close();
    this.open = null;
    get("loudness").textContent = "Microphone closed";
    get("meter", HTMLMeterElement).value = 0;
  }
}

/** A recording that runs from the start. */
export class Recording {
  /**
   * @param {MediaStream} stream
   * @param {{ begun: () => void, lost: () => void }} told `lost` when it ends by itself: the microphone went away
   */
  constructor(stream, { begun, lost }) {
    const mimeType = kindOf() ?? "";
    /** @type {Blob[]} */
    const pieces = [];
    this.isAsked = false;
    this.media = new MediaRecorder(stream, { mimeType, audioBitsPerSecond: BITS });
    this.media.addEventListener("start", begun);
    this.media.addEventListener("dataavailable", (event) => pieces.push(event.data));
    /** @type {Promise<Blob>} */
    this.ended = new Promise((done) => {
      this.media.addEventListener("stop", () => {
        done(new Blob(pieces, { type: mimeType.split(";")[0] }));
        if (!this.isAsked) lost();
      });
    });
    this.media.start();
  }

  /** End it, and return its sound. */
  stop() {
    this.isAsked = true;
    if (this.media.state !== "inactive") this.media.stop();
    return this.ended;
  }
}
