// Recording a part: the key steps the board while the microphone records; each part is sent when it has ended.

import { ask, make, Refused, say } from "./kit.js";

const get = (id) => document.getElementById(id);
const recorder = get("recorder");
const board = get("board");
const MOST = Number(recorder.dataset.most) * 1000;
/** Two presses closer than this are one, in milliseconds. */
const TWICE = 150;
const KINDS = ["audio/webm;codecs=opus", "audio/mp4"];

let microphone = null; // { stream, analyser, samples, context }
let part = null; // the list item of the part that is recorded
let steps = []; // its steps: { role, says }
let at = 0; // the step that shows
let marks = []; // when the board was stepped, in milliseconds
let began = 0; // when the sound began
let last = 0; // the last press
let media = null; // the MediaRecorder, while it runs
let starting = false; // the microphone is being asked for
let unsent = null; // what could not be sent
let clock = 0;

// ---- the board -------------------------------------------------------------------------------------------

const inside = (id) => board.contentDocument?.getElementById(id);

/** Show the first step of a part on the board in the frame. */
function openPart() {
  if (inside("aloud")?.checked) inside("aloud").click(); // the microphone would hear it
  const links = board.contentDocument?.querySelectorAll("#problems a") ?? [];
  const focused = document.activeElement;
  links[Number(part.dataset.at)]?.click();
  focused?.focus({ preventScroll: true });
}

// ---- the script beside it --------------------------------------------------------------------------------

function showStep() {
  const { role, says } = steps[at];
  get("step-place").textContent = `Step ${at + 1} of ${steps.length}`;
  get("role").textContent = role;
  get("says").textContent = says;
  const next = steps[at + 1];
  get("coming").textContent = next ? `Then: ${next.role} ${next.says}` : "This is the last step.";
  nameButton();
}

function nameButton() {
  let name = "Start";
  if (unsent) name = "Send it again";
  else if (media) name = at + 1 < steps.length ? "Next step" : "End and keep";
  get("step").textContent = name;
  get("throw-away").textContent = media || unsent ? "Stop and throw away" : "Close";
}

function state(words) {
  get("state").textContent = words;
}

// ---- the microphone --------------------------------------------------------------------------------------

async function openMicrophone() {
  if (microphone?.stream.active) return true;
  try {
    const stream = await navigator.mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: true, autoGainControl: true, channelCount: 1 },
    });
    const context = new AudioContext();
    const analyser = context.createAnalyser();
    analyser.fftSize = 2048;
    context.createMediaStreamSource(stream).connect(analyser);
    microphone = { stream, context, analyser, samples: new Float32Array(analyser.fftSize), quiet: performance.now() };
    level();
    return true;
  } catch (error) {
    const none = error.name === "NotFoundError" ? "No microphone was found." : "The microphone was not given to this page.";
    state(`${none} See that one is connected and allowed, then press Start.`);
    return false;
  }
}

/** Tell how loud it is, by a bar and by a word. */
function level() {
  if (!microphone) return;
  microphone.analyser.getFloatTimeDomainData(microphone.samples);
  let sum = 0;
  let peak = 0;
  for (const sample of microphone.samples) {
    sum += sample * sample;
    peak = Math.max(peak, Math.abs(sample));
  }
  const decibels = 10 * Math.log10(sum / microphone.samples.length + 1e-10);
  const bar = Math.max(0, Math.min(100, Math.round((decibels + 60) * 1.9)));
  get("meter").value = Math.max(bar, get("meter").value - 6); // it falls slowly, so that it can be read
  const now = performance.now();
  if (decibels > -45) microphone.quiet = now;
  let word = "Good";
  if (peak > 0.97) word = "Too loud: move away a little";
  else if (now - microphone.quiet > 1500) word = "Silent: nothing is heard";
  if (get("loudness").textContent !== word) get("loudness").textContent = word;
  setTimeout(level, 100);
}

function closeMicrophone() {
  microphone?.stream.getTracks().forEach((track) => track.stop());
  microphone?.context.close();
  microphone = null;
  get("loudness").textContent = "Microphone closed";
  get("meter").value = 0;
}

// ---- recording -------------------------------------------------------------------------------------------

async function start() {
  if (starting) return;
  starting = true;
  const ready = await openMicrophone();
  starting = false;
  if (!ready || recorder.hidden) return;
  state("Recording. Speak, and step the board.");
  openPart();
  at = 0;
  marks = [];
  const kind = KINDS.find((one) => MediaRecorder.isTypeSupported(one));
  const pieces = [];
  const mine = new MediaRecorder(microphone.stream, { mimeType: kind, audioBitsPerSecond: 64000 });
  media = mine;
  mine.keeps = false;
  mine.addEventListener("start", () => { began = performance.now(); });
  mine.addEventListener("dataavailable", (event) => pieces.push(event.data));
  mine.addEventListener("stop", () => {
    if (mine.keeps) send({ sound: new Blob(pieces, { type: kind.split(";")[0] }), marks });
  });
  began = last = performance.now();
  mine.start();
  recorder.classList.add("runs");
  addEventListener("beforeunload", warn);
  showStep();
  tick();
}

function tick() {
  clearTimeout(clock);
  if (!media) return;
  const passed = performance.now() - began;
  const seconds = Math.max(0, Math.floor(passed / 1000));
  const time = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  if (passed > MOST) {
    stop(false);
    state("The recording was stopped: it became too long. Record this part again, shorter.");
    return;
  }
  get("state").dataset.time = time;
  clock = setTimeout(tick, 250);
}

/** A press of the key: the next step, or after the last one the end. */
function press() {
  if (unsent) {
    send(unsent);
    return;
  }
  if (!media) {
    start();
    return;
  }
  const now = performance.now();
  if (now - last < TWICE) return;
  last = now;
  if (at + 1 < steps.length) {
    marks.push(Math.round(now - began));
    at += 1;
    inside("next")?.click();
    showStep();
  } else stop(true);
}

function stop(keeps) {
  const mine = media;
  media = null;
  clearTimeout(clock);
  removeEventListener("beforeunload", warn);
  recorder.classList.remove("runs");
  delete get("state").dataset.time;
  if (mine && mine.state !== "inactive") {
    mine.keeps = keeps;
    mine.stop();
  }
  nameButton();
}

function warn(event) {
  event.preventDefault();
}

async function send(recording) {
  const of = part;
  const form = new FormData();
  form.set("label", of.dataset.part);
  form.set("steps", recording.marks.join(" "));
  form.set("sound", recording.sound, "recording");
  state("Sending ...");
  get("step").disabled = true;
  try {
    const kept = await ask(recorder.dataset.to, form);
    unsent = null;
    state(`Kept: ${kept.seconds}.`);
    say(`Kept: ${kept.seconds}.`);
    put(of, kept.seconds);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    unsent = error.status === 422 || error.status === 413 ? null : recording;
    state(`Not kept. ${error.message}`);
  } finally {
    get("step").disabled = false;
    nameButton();
    get("step").focus();
  }
}

/** Show on the page that a part is kept, with what can be done with it. */
function put(of, seconds) {
  const label = of.dataset.part;
  const name = of.querySelector("[data-record] .only-heard").textContent;
  of.querySelector("[data-kept]").textContent = `✓ Kept: ${seconds}`;
  of.querySelector("[data-record]").firstChild.data = "Record again";
  of.querySelector("audio")?.remove();
  if (of.querySelector("[data-listen]")) return;
  const heard = (words) => make("span", { class: "only-heard" }, words);
  const listen = make("a", { class: "button small", href: `${recorder.dataset.to}/${encodeURIComponent(label)}`, "data-listen": true });
  listen.append("Listen", heard(` to${name}`));
  const forget = make("form", { class: "inline", method: "post", action: recorder.dataset.toForget, "data-forget": true });
  forget.append(
    make("input", { type: "hidden", name: "csrf_token", value: document.querySelector('meta[name="csrf_token"]').content }),
    make("input", { type: "hidden", name: "label", value: label }),
    make("button", { type: "submit", class: "small" }, "Delete", heard(` the recording of${name}`)),
  );
  of.querySelector(".row").append(listen, forget);
}

// ---- opening and closing ---------------------------------------------------------------------------------

function open(item) {
  if (media) return;
  part?.removeAttribute("aria-current");
  part = item;
  part.setAttribute("aria-current", "true");
  unsent = null;
  at = 0;
  steps = [...part.querySelectorAll(".steps-said li")].map((step) => ({
    role: step.querySelector(".role").textContent,
    says: step.querySelector(".says").textContent,
  }));
  recorder.hidden = false;
  get("stage").classList.add("recording");
  get("recorder-name").textContent = `Recording: ${part.querySelector("h3").textContent.trim()}`;
  state("Press Space when you are ready.");
  openPart();
  showStep();
  get("stage").scrollIntoView();
  get("step").focus({ preventScroll: true });
  openMicrophone();
}

function close() {
  if (media || unsent) {
    stop(false);
    unsent = null;
    state("Thrown away. What was kept before is kept. Press Space to record again.");
    at = 0;
    openPart();
    showStep();
    return;
  }
  closeMicrophone();
  recorder.hidden = true;
  get("stage").classList.remove("recording");
  part.removeAttribute("aria-current");
  part.querySelector("[data-record]").focus();
}

/** Whether a key is the recorder's: Escape, and the keys that step, unless another control has them. */
function isOurs(event) {
  if (recorder.hidden || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return false;
  if (event.key === "Escape") return true;
  if (event.key !== " " && event.key !== "ArrowRight") return false;
  const other = event.target.closest?.("input, select, textarea, summary, audio, video, a, button");
  return Boolean(media) || !other || other.ownerDocument !== document || recorder.contains(other);
}

function keyed(event) {
  if (!isOurs(event)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (event.type !== "keydown" || event.repeat) return;
  if (event.key === "Escape") close();
  else if (!get("step").disabled) press();
}

for (const kind of ["keydown", "keyup"]) addEventListener(kind, keyed, true);

/** While a part is recorded the board is stepped only together with the recording. */
function clicked(event) {
  if (!media || !event.isTrusted) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (event.target.closest("#next")) press();
}

function listenInside() {
  for (const kind of ["keydown", "keyup"]) board.contentWindow.addEventListener(kind, keyed, true);
  board.contentWindow.addEventListener("click", clicked, true);
}

board.addEventListener("load", listenInside);
if (board.contentDocument?.readyState === "complete") listenInside();

get("step").addEventListener("click", press);
get("throw-away").addEventListener("click", close);

const can = navigator.mediaDevices?.getUserMedia && "MediaRecorder" in window && KINDS.some((one) => MediaRecorder.isTypeSupported(one));
get("no-microphone").hidden = Boolean(can);
for (const button of document.querySelectorAll("[data-record]")) {
  button.hidden = !can;
  button.addEventListener("click", () => open(button.closest("[data-part]")));
}
