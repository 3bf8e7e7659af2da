// The recorder: a key steps the board while the microphone records; a part is sent when it has ended.

import { ask, get, refusal, say } from "./kit.js";
import { Microphone, NoMicrophone, Recording } from "./record_microphone.js";
import { onBoard } from "./record_part.js";
import { Take, clockTime } from "./record_take.js";

/** @typedef {import("./record_part.js").Part} Part */
/** What was recorded and is not kept yet. @typedef {{ part: Part, sound: Blob, marks: number[] }} Taken */
/** `row` is markup. @typedef {{ words: string, row: string }} Kept */

const TICK = 250; // milliseconds
const FINAL = [413, 422]; // refused for what it is: sent again, it would be refused again

const place = get("recorder");
const stage = get("stage");
const key = get("step", HTMLButtonElement);
const again = get("again", HTMLButtonElement);

/** @param {Event} event */
const warn = (event) => event.preventDefault();

export class Recorder {
  /** @param {(after: Part) => Part | undefined} following the part to be recorded after one */
  constructor(following) {
    this.following = following;
    this.isKept = false; // the part that is open was just kept
    this.microphone = new Microphone();
    this.most = Number(place.dataset.most) * 1000;
    /** @type {Part | null} */
    this.part = null;
    this.take = new Take(0, 0);
    /** @type {Recording | null} */
    this.recording = null;
    /** @type {Taken | null} */
    this.unsent = null;
    this.isStarting = false; // the microphone is asked for
  }

  get isOpen() { return !place.hidden; }

  get isRecording() { return this.recording !== null; }

  // What it shows -----------------------------------------------------------------------------------------------

  /** @param {string} words */
  state(words) {
    get("state").textContent = words;
  }

  get next() { return this.part ? this.following(this.part) : undefined; }

  showStep() {
    const steps = this.part?.steps ?? [];
    const { at } = this.take;
    const [now, next] = [steps[at], steps[at + 1]];
    get("step-place").textContent = `Step ${at + 1} of ${steps.length}`;
    get("role").textContent = now?.role ?? "";
    get("says").textContent = now?.says ?? "";
    get("coming").textContent = next ? `Then: ${next.role} ${next.says}` : "This is the last step.";
    this.nameKeys();
  }

  nameKeys() {
    let name = "Start";
    if (this.unsent) name = "Send it again";
    else if (this.isKept) name = this.next ? `Next: ${this.next.name}` : "All are recorded: close";
    else if (this.isRecording) name = this.take.isLast ? "End and keep" : "Next step";
    key.textContent = name;
    again.hidden = !this.isKept;
    get("throw-away").textContent = this.isRecording || this.unsent ? "Stop and throw away" : "Close";
  }

  // A part is opened, recorded, sent ----------------------------------------------------------------------------

  /** @param {Part} part */
  open(part) {
    if (this.isRecording) return;
    this.part?.mark(false);
    this.part = part;
    part.mark(true);
    this.unsent = null;
    this.isKept = false;
    place.hidden = false;
    stage.classList.add("recording");
    get("recorder-name").textContent = `Recording: ${part.name}`;
    this.state("Press Space when you are ready.");
    this.atFirst();
    stage.scrollIntoView();
    key.focus({ preventScroll: true });
    this.opened();
  }

  /** The part stands at its first step again, here and on the board. */
  atFirst() {
    this.take = new Take(this.part?.steps.length ?? 0, performance.now());
    this.part?.show();
    this.showStep();
  }

  /** @returns {Promise<MediaStream | null>} null where there is none, which is told */
  async opened() {
    try {
      return await this.microphone.opened();
    } catch (error) {
      if (!(error instanceof NoMicrophone)) throw error;
      this.state(`${error.message} See that one is connected and allowed, then press Start.`);
      return null;
    }
  }

  /** The key was pressed: send again, start, step on, end, or go on to the next part. */
  press() {
    const { next } = this;
    if (this.unsent) this.send(this.unsent);
    else if (this.isRecording) this.step();
    else if (!this.isKept) this.start();
    else if (next) this.open(next);
    else this.close();
  }

  async start() {
    if (this.isStarting) return;
    this.isStarting = true;
    this.isKept = false;
    const stream = await this.opened();
    this.isStarting = false;
    if (!stream || !this.isOpen) return;
    this.state("Recording. Speak, and step the board.");
    this.atFirst();
    const { take } = this;
    this.recording = new Recording(stream, { begun: () => take.begin(performance.now()), lost: () => this.lost() });
    place.classList.add("runs");
    addEventListener("beforeunload", warn);
    this.nameKeys();
    this.tick(this.recording);
  }

  step() {
    const act = this.take.press(performance.now());
    if (act === "end") this.keep();
    if (act !== "step") return;
    onBoard("next")?.click();
    this.showStep();
  }

  /** Show the time, and stop what becomes too long. @param {Recording} mine */
  tick(mine) {
    if (this.recording !== mine) return;
    const passed = this.take.passed(performance.now());
    if (passed > this.most) {
      this.stop();
      this.state("The recording was stopped: it became too long. Record this part again, shorter.");
      return;
    }
    get("state").dataset.time = clockTime(passed);
    setTimeout(() => this.tick(mine), TICK);
  }

  lost() {
    this.stop();
    this.state("The microphone went away, and the recording was stopped. See that it is connected, then record this part again.");
  }

  /** End the recording; its sound is returned. */
  stop() {
    const mine = this.recording;
    this.recording = null;
    removeEventListener("beforeunload", warn);
    place.classList.remove("runs");
    delete get("state").dataset.time;
    this.nameKeys();
    return mine?.stop() ?? null;
  }

  async keep() {
    const { part, take } = this;
    const sound = await this.stop();
    if (part && sound) await this.send({ part, sound, marks: take.marks });
  }

  /** @param {Taken} taken */
  async send(taken) {
    const form = new FormData();
    form.set("label", taken.part.label);
    form.set("saw", taken.part.saw);
    form.set("steps", taken.marks.join(" "));
    form.set("sound", taken.sound, "recording");
    this.state("Sending ...");
    key.disabled = true;
    try {
      /** @type {Kept} */
      const kept = await ask(place.dataset.to ?? "", form);
      this.unsent = null;
      this.isKept = true;
      this.state(kept.words);
      say(kept.words);
      taken.part.put(kept.row);
    } catch (error) {
      const refused = refusal(error);
      if (refused.told.stands) taken.part.saw = refused.told.stands; // sent once more, it takes that place
      this.unsent = FINAL.includes(refused.status) ? null : taken;
      this.state(`Not kept. ${refused.message}`);
    } finally {
      key.disabled = false;
      this.nameKeys();
      key.focus();
    }
  }

  /** Throw away what is recorded and not kept; where there is nothing, close. */
  close() {
    if (this.isRecording || this.unsent) {
      this.stop();
      this.unsent = null;
      this.state("Thrown away. What was kept before is kept. Press Space to record again.");
      this.atFirst();
      return;
    }
    this.microphone.close();
    place.hidden = true;
    stage.classList.remove("recording");
    this.part?.mark(false);
    this.part?.focus();
  }
}
